// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// NIST Statistical Reference Datasets, linear least squares (public domain, US Government): data and certified values.

#include <array>
#include <cstddef>

namespace nist {

struct Point {
    double x, y;
};

/// Norris, calibration of ozone monitors: y = B0 + B1 x.
inline constexpr std::array<Point, 36> norris{{
    {0.2, 0.1},     {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2},    {226.5, 228.1}, {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1},
    {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},     {0.6, 0.1},     {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
    {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},     {0.3, 0.6},     {556.8, 557.6}, {339.1, 339.3},
    {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9}, {11.1, 10.2},   {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2},
}};

/// Pontius, calibration of load cells: y = B0 + B1 x + B2 x^2; x = 150000 (i + 1), run twice.
inline constexpr std::array<double, 40> pontius_y{0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146,
                                                  1.20001, 1.30822, 1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844,
                                                  0.11052, 0.22018, 0.32939, 0.43886, 0.54798, 0.65739, 0.76596, 0.87474, 0.98300, 1.09150,
                                                  1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829};

inline constexpr double pontius_x(std::size_t i) { return 150000.0 * static_cast<double>(i % 20 + 1); }

} // namespace nist
