// The estimated calories of a day: Dietary Guidelines for Americans, 2020-2025, Appendix 2, Tables A2-1 and A2-2.
#include "core/rules/day.h"

namespace core {
namespace {

constexpr DayNeed table[] = {
    {Sex::Male, true, 12, 12, 800, 800, 800},       {Sex::Male, true, 15, 15, 900, 900, 900},
    {Sex::Male, true, 18, 18, 1000, 1000, 1000},    {Sex::Male, true, 21, 23, 1000, 1000, 1000},
    {Sex::Female, true, 12, 12, 800, 800, 800},     {Sex::Female, true, 15, 15, 800, 800, 800},
    {Sex::Female, true, 18, 18, 900, 900, 900},     {Sex::Female, true, 21, 23, 1000, 1000, 1000},
    {Sex::Male, false, 2, 2, 1000, 1000, 1000},     {Sex::Male, false, 3, 3, 1000, 1400, 1400},
    {Sex::Male, false, 4, 4, 1200, 1400, 1600},     {Sex::Male, false, 5, 5, 1200, 1400, 1600},
    {Sex::Male, false, 6, 6, 1400, 1600, 1800},     {Sex::Male, false, 7, 7, 1400, 1600, 1800},
    {Sex::Male, false, 8, 8, 1400, 1600, 2000},     {Sex::Male, false, 9, 9, 1600, 1800, 2000},
    {Sex::Male, false, 10, 10, 1600, 1800, 2200},   {Sex::Male, false, 11, 11, 1800, 2000, 2200},
    {Sex::Male, false, 12, 12, 1800, 2200, 2400},   {Sex::Male, false, 13, 13, 2000, 2200, 2600},
    {Sex::Male, false, 14, 14, 2000, 2400, 2800},   {Sex::Male, false, 15, 15, 2200, 2600, 3000},
    {Sex::Male, false, 16, 16, 2400, 2800, 3200},   {Sex::Male, false, 17, 17, 2400, 2800, 3200},
    {Sex::Male, false, 18, 18, 2400, 2800, 3200},   {Sex::Male, false, 19, 20, 2600, 2800, 3000},
    {Sex::Male, false, 21, 25, 2400, 2800, 3000},   {Sex::Male, false, 26, 30, 2400, 2600, 3000},
    {Sex::Male, false, 31, 35, 2400, 2600, 3000},   {Sex::Male, false, 36, 40, 2400, 2600, 2800},
    {Sex::Male, false, 41, 45, 2200, 2600, 2800},   {Sex::Male, false, 46, 50, 2200, 2400, 2800},
    {Sex::Male, false, 51, 55, 2200, 2400, 2800},   {Sex::Male, false, 56, 60, 2200, 2400, 2600},
    {Sex::Male, false, 61, 65, 2000, 2400, 2600},   {Sex::Male, false, 66, 70, 2000, 2200, 2600},
    {Sex::Male, false, 71, 75, 2000, 2200, 2600},   {Sex::Male, false, 76, no_end, 2000, 2200, 2400},
    {Sex::Female, false, 2, 2, 1000, 1000, 1000},   {Sex::Female, false, 3, 3, 1000, 1200, 1400},
    {Sex::Female, false, 4, 4, 1200, 1400, 1400},   {Sex::Female, false, 5, 5, 1200, 1400, 1600},
    {Sex::Female, false, 6, 6, 1200, 1400, 1600},   {Sex::Female, false, 7, 7, 1200, 1600, 1800},
    {Sex::Female, false, 8, 8, 1400, 1600, 1800},   {Sex::Female, false, 9, 9, 1400, 1600, 1800},
    {Sex::Female, false, 10, 10, 1400, 1800, 2000}, {Sex::Female, false, 11, 11, 1600, 1800, 2000},
    {Sex::Female, false, 12, 12, 1600, 2000, 2200}, {Sex::Female, false, 13, 13, 1600, 2000, 2200},
    {Sex::Female, false, 14, 14, 1800, 2000, 2400}, {Sex::Female, false, 15, 15, 1800, 2000, 2400},
    {Sex::Female, false, 16, 16, 1800, 2000, 2400}, {Sex::Female, false, 17, 17, 1800, 2000, 2400},
    {Sex::Female, false, 18, 18, 1800, 2000, 2400}, {Sex::Female, false, 19, 20, 2000, 2200, 2400},
    {Sex::Female, false, 21, 25, 2000, 2200, 2400}, {Sex::Female, false, 26, 30, 1800, 2000, 2400},
    {Sex::Female, false, 31, 35, 1800, 2000, 2200}, {Sex::Female, false, 36, 40, 1800, 2000, 2200},
    {Sex::Female, false, 41, 45, 1800, 2000, 2200}, {Sex::Female, false, 46, 50, 1800, 2000, 2200},
    {Sex::Female, false, 51, 55, 1600, 1800, 2200}, {Sex::Female, false, 56, 60, 1600, 1800, 2200},
    {Sex::Female, false, 61, 65, 1600, 1800, 2000}, {Sex::Female, false, 66, 70, 1600, 1800, 2000},
    {Sex::Female, false, 71, 75, 1600, 1800, 2000}, {Sex::Female, false, 76, no_end, 1600, 1800, 2000},
};

} // namespace

std::span<const DayNeed> day_needs()
{
    return table;
}

} // namespace core
