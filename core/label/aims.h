// What people look for in a nutrient: less, more, or neither. Rows and sources: core/label/aims_table.cpp.
#pragma once

#include "core/label/nutrient.h"

#include <string_view>

namespace core {

/// Which way people are taught to look.
enum class Aim { Less, More, Neither };

/// Which list says so; the leader picks one.
enum class AimList {
    Class,      ///< as label classes teach it (common practice): the default
    Label2016,  ///< as published with the label of 2016
    LabelOlder, ///< as published with the label before it
};

/// The aim by that list.
[[nodiscard]] Aim aim_of(Nutrient nutrient, AimList list = AimList::Class);

/// Where the list is published, for *why*: a place, or "common practice".
[[nodiscard]] std::string_view source_of(AimList list);

} // namespace core
