// Which label it is: its panel, and whom it is for. Both decide the Daily Values; the panel decides some roundings.
#pragma once

namespace core {

/// Which panel it is: the one of the rule of 27 May 2016, or one before it with other Daily Values.
enum class Panel { Of2016, Older };

/// Whom the label is for; each has Daily Values of its own (21 CFR 101.9(c)(9), (j)(5)).
enum class Audience { Adult, Ages1To3, Infant };

} // namespace core
