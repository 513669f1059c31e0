// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "comparison/fair_comparison.h"

#include <cstddef>
#include <string>
#include <vector>

namespace ullage {

/// Units of one maker and model, as a sample of that model.
struct ModelSample {
    std::string maker, model;
    std::vector<std::size_t> rows; ///< of the comparison, those that count: one for each specimen
    std::size_t specimens = 0;     ///< of the model in the comparison, counted or not
    Quantity usable_fraction;      ///< "usable_fraction": mean of the specimens
    Quantity spread_percent;       ///< "spread_percent": standard deviation between specimens, % of the mean
    Quantity next_fraction;        ///< "next_specimen_fraction": where the next specimen is expected, with 95 %
    Message sentence;              ///< for people
};

/// The models that units of the comparison name, in order of maker and model. A specimen counts with the usable fraction of its row at the common
/// load, or as tested where the loads of all that count lie within like_loads_ratio; one with several rows counts by the first.
///
/// Mean ± t(n − 1)·s/√n, convolved with the widest gain limit of its meters, which all specimens may share; the next specimen lies within mean ±
/// t(n − 1)·s·√(1 + 1/n) (prediction interval of a normal sample; derived from JCGM 100:2008, 4.2, as the variance of a further value about the
/// mean). One specimen says nothing of others: spread and prediction are `not known`.
[[nodiscard]] std::vector<ModelSample> model_samples(const Comparison& comparison, const FairComparison& fair);

} // namespace ullage
