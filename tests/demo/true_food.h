// The true foods behind the demo catalog: what is really in each invented product, before a label rounds it.
#pragma once

#include "core/label/label.h"
#include "core/origin.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace test::demo {

/// What a food is prepared with: so much of another true food for one serving.
struct PreparedWith {
    std::string name;
    core::Measure amount;
};

/// One row of config/demo/true_foods.csv. Amounts are exact, and stand for 100 g or 100 mL of the food.
struct TrueFood {
    std::string gtin; ///< as on the package: 8, 12 or 13 digits
    std::string name;
    std::string brand;
    std::string aisle;
    std::string note;
    core::Date entered_on;
    core::Panel panel;
    core::Audience audience;
    bool simplified;                      ///< the simplified label of 21 CFR 101.9(f)
    std::set<core::Nutrient> leaves_out;  ///< lines that the label does not print
    std::string household;                ///< the serving in household words
    core::Measure serving;                ///< its true size
    std::optional<core::Measure> package; ///< the true content of the package; nothing for a random weight
    std::string servings;                 ///< "single", "varied", a number counted in household measures; empty: divide
    std::string net_quantity;             ///< as printed
    std::optional<core::Mass> weight_per_cup; ///< cereals only: decides their reference amount
    std::string reference_category;           ///< its row in 21 CFR 101.12(b)
    core::Measure reference_amount;           ///< the amount of this food that the row stands for
    std::optional<core::SecondColumn::Kind> second;
    std::optional<PreparedWith> prepared;
    std::optional<std::int64_t> protein_quality; ///< billionths; for labels that must print a percent of protein
    std::map<core::Nutrient, core::Content> per_hundred;
    std::optional<std::int64_t> vitamin_a_iu; ///< billionths of a unit; the older panel counts vitamin A in IU
    std::string ingredients;
    std::string contains; ///< "none" where the label has no such statement
};

/// Reads the file. Throws std::runtime_error, naming the food and the column, for anything that it cannot read.
[[nodiscard]] std::vector<TrueFood> read_true_foods(const std::string& path);

/// The food with this name; throws std::runtime_error where there is none.
[[nodiscard]] const TrueFood& food_named(const std::vector<TrueFood>& foods, const std::string& name);

/// Billionths of grams or of millilitres.
[[nodiscard]] std::int64_t nano_of(const core::Measure& measure);

/// What is in so much of the food, cut to billionths.
[[nodiscard]] core::Content content_in(core::Content per_hundred, std::int64_t measure_nano);

/// What the whole package holds, in billionths of grams or millilitres: counted servings, else its true content.
[[nodiscard]] std::int64_t package_nano(const TrueFood& food);

} // namespace test::demo
