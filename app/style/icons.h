// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>

namespace ullage {

/// The program's own icons; each is resources/icons/NAME.svg.
enum class Glyph {
    record,
    mark,
    report,
    export_out,
    import_in,
    unit,
    meter,
    load_list,
    run,
    compare,
    sizing,
    panel_input,
    note,
    doubt,
    fault,
    good,
    add,
    amend,
    withdraw,
    remove,
    undo,
    redo,
    settings,
    sun,
    moon,
    search,
    open,
    close,
    help,
    chart,
    clock,
    photo
};

/// Which colour of the palette an icon takes.
enum class GlyphTone { ink, soft, accent, on_accent, good, doubt, fault };

/// `glyph` in the colour of the theme in force whenever it is painted, so an icon needs no renewal when the theme
/// changes. Sharp at any size. Disabled icons are paler.
[[nodiscard]] QIcon glyph_icon(Glyph glyph, GlyphTone tone = GlyphTone::ink);

} // namespace ullage
