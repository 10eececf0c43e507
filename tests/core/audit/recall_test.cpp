// How many sound labels the audit accuses, and how many spoiled ones it finds: measured on labels that were spoiled on
// purpose, printed and held.
#include "core/audit/audit.h"
#include "tests/core/audit/label_mill.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>

namespace {

using test::LabelMill;
using test::Spoiled;
using test::Written;

constexpr int labels = 5'000;

struct Share {
    int all = 0;
    int accused = 0;
    int named = 0; ///< a doubt names the line that was spoiled
    std::map<std::string, int> by;
    [[nodiscard]] double percent() const { return all == 0 ? 0 : 100.0 * accused / all; }
    [[nodiscard]] double named_percent() const { return all == 0 ? 0 : 100.0 * named / all; }
};

bool names(const std::vector<core::Doubt>& doubts, core::Nutrient line)
{
    for (const auto& doubt : doubts)
        if (doubt.nutrient == line || doubt.other == line || doubt.rule == core::DoubtRule::PartsOverWhole)
            return true;
    return false;
}

Share sound(Written written)
{
    LabelMill mill(1);
    Share share;
    for (int i = 0; i < labels; ++i) {
        const auto made = mill.sound(written);
        const auto doubts = core::audit(made.product);
        ++share.all;
        share.accused += doubts.empty() ? 0 : 1;
        for (const auto& doubt : doubts)
            ++share.by[std::string(made.kind) + " " + std::string(core::info(doubt.rule).name)];
    }
    return share;
}

Share spoiled(Written written, Spoiled how)
{
    LabelMill mill(2);
    Share share;
    for (int i = 0; i < labels; ++i) {
        auto made = mill.sound(written);
        const auto line = mill.spoil(made.product, how);
        if (!line)
            continue;
        const auto doubts = core::audit(made.product);
        ++share.all;
        share.accused += doubts.empty() ? 0 : 1;
        share.named += names(doubts, *line) ? 1 : 0;
        if (doubts.empty())
            ++share.by[std::string(core::info(*line).key)];
    }
    return share;
}

void tell(const char* what, const Share& share, bool lines)
{
    std::printf("  %-44s %6.2f %%", what, share.percent());
    if (lines)
        std::printf("  (the line named: %6.2f %%)", share.named_percent());
    std::printf("\n");
    if (std::getenv("PAIRSTAND_AUDIT_LONG"))
        for (const auto& [key, count] : share.by)
            std::printf("      %-60s %d\n", key.c_str(), count);
}

} // namespace

TEST_CASE("audit: measured on sound and spoiled labels")
{
    std::printf("Audit of %d labels of each kind, accused:\n", labels);
    const auto package = sound(Written::AsPackage);
    const auto release = sound(Written::AsRelease);
    tell("sound, with percents", package, false);
    tell("sound, amounts alone", release, false);
    CHECK(package.percent() <= 1);
    CHECK(release.percent() <= 1);
    const auto slip = spoiled(Written::AsPackage, Spoiled::SlipOfTen);
    const auto unit = spoiled(Written::AsPackage, Spoiled::UnitSwap);
    tell("slip of ten, with percents", slip, true);
    const auto lawful = spoiled(Written::AsPackage, Spoiled::LawfulSlip);
    tell("slip of ten to a lawful figure, with percents", lawful, true);
    tell("unit swapped, with percents", unit, true);
    CHECK(lawful.percent() >= 95);
    CHECK(slip.percent() >= 95);
    CHECK(unit.percent() >= 95);
    const auto bare_slip = spoiled(Written::AsRelease, Spoiled::SlipOfTen);
    const auto bare_unit = spoiled(Written::AsRelease, Spoiled::UnitSwap);
    tell("slip of ten, amounts alone", bare_slip, true);
    tell("slip of ten to a lawful figure, amounts alone", spoiled(Written::AsRelease, Spoiled::LawfulSlip), true);
    tell("unit swapped, amounts alone", bare_unit, true);
    tell("per 100 for per serving", spoiled(Written::AsPackage, Spoiled::PerHundred), false);
    tell("serving size slipped", spoiled(Written::AsPackage, Spoiled::ServingSlip), false);
    CHECK(bare_slip.percent() >= 60);
    CHECK(bare_unit.percent() >= 95);
}
