// Every row of whole_grain_words.csv as the first grain of an ingredient list.
#include "core/label/grains.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace test {
namespace {

using Kind = core::FirstGrain::Kind;

/// What the first grain must be; a plant that is no grain is passed over, and so is not whole.
Kind kind_of(const ReferenceRow& row)
{
    const auto& means = row["means_whole_grain"];
    if (means == "ignore" || row["grain"] == "not_a_grain")
        return Kind::NoneNamed;
    if (means == "yes")
        return Kind::Whole;
    if (means == "program_yes")
        return Kind::CountsInPrograms;
    if (means == "unclear")
        return Kind::Unclear;
    REQUIRE(means == "no");
    return Kind::NotWhole;
}

std::string why_skipped(const ReferenceRow& row)
{
    if (row["word"] == "high fiber" || row["word"] == "brown color")
        return "words of a package's front that name no grain";
    if (row["word"] == "contains whole grain")
        return "words of a package's front: in a list they begin a statement";
    return "";
}

/// Rows whose `memory` mark is settled, with the published text.
std::optional<std::string> settled_by(const ReferenceRow& row)
{
    if (row["checked"] != "memory")
        return std::nullopt;
    const auto& word = row["word"];
    static const std::string words = "Minnesota Department of Education, What is a Whole Grain?: ";
    if (word.starts_with("whole ") || word == "white whole wheat flour" || word == "sprouted whole wheat")
        return words + "the word whole listed before a grain";
    if (word.ends_with(" groats"))
        return words + "berries and groats designate whole grains";
    if (word == "wheat germ" || word.ends_with(" bran"))
        return "state handout, Whole Grain-Rich: bran and wheat germ are not whole grains";
    return std::nullopt;
}

/// The row's words; a pattern with each grain's name in it.
std::vector<std::string> words_of(const ReferenceRow& row)
{
    static const std::string gap = "(name of a grain)";
    const auto& word = row["word"];
    const auto at = word.find(gap);
    if (at == std::string::npos)
        return {word};
    std::vector<std::string> all;
    for (const std::string name :
         {"wheat", "oats", "corn", "rye", "barley", "millet", "sorghum", "spelt", "yellow corn"})
        if (at != 0 || name != "yellow corn")
            all.push_back(word.substr(0, at) + name + word.substr(at + gap.size()));
    return all;
}

} // namespace

TEST_CASE("whole_grain_words.csv: every word is read as what it is")
{
    TableRun run("whole_grain_words.csv");
    for (const auto& row : reference_rows("whole_grain_words.csv")) {
        CAPTURE(row.place());
        if (const auto why = why_skipped(row); !why.empty()) {
            run.skipped(why);
            continue;
        }
        for (const auto& word : words_of(row)) {
            CAPTURE(word);
            for (const auto& list :
                 {word, "Water, sugar, " + word + ", salt", "INGREDIENTS: " + word + " (salt, water)."}) {
                CAPTURE(list);
                CHECK(core::first_grain(core::take_apart(list)).kind == kind_of(row));
            }
        }
        if (settled_by(row))
            run.settled();
        else
            run.used();
    }
    run.done(186);
}

} // namespace test
