#include "catalog/load/audit_tally.h"
#include "catalog/load/duplicates.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using catalog::Duplicates;
using catalog::SameName;
using test::make_product;

TEST_CASE("duplicates: the same name and brand under several numbers, however they are written")
{
    Duplicates names;
    const auto add = [&](const char* digits, const char* name, const char* brand, bool doubted = false) {
        auto product = make_product(digits, name);
        product.brand = brand;
        names.add(product, doubted);
    };
    add("95212345432", "Oat rounds", "Cedar Hollow");
    add("03600029145", "OAT  Rounds!", "cedar hollow", true);
    add("95201410010", "Oat rounds", "Other Mill");
    add("95201410011", "Oat round", "Cedar Hollow");
    add("95201410012", "Oat", "rounds Cedar Hollow");
    std::vector<SameName> groups;
    names.each_group([&](const SameName& group) { groups.push_back(group); });
    REQUIRE(groups.size() == 1);
    REQUIRE(groups.front().size() == 2);
    CHECK(groups.front()[0].gtin.digits().substr(2, 11) == "03600029145");
    CHECK(groups.front()[0].doubted);
    CHECK(!groups.front()[1].doubted);
}

TEST_CASE("duplicates: none, and nothing at all")
{
    Duplicates names;
    int groups = 0;
    names.each_group([&](const SameName&) { ++groups; });
    names.add(make_product("03600029145", "Oat rounds"));
    names.each_group([&](const SameName&) { ++groups; });
    CHECK(groups == 0);
}

TEST_CASE("audit tally: counts go on where samples end")
{
    catalog::AuditTally tally(2);
    const core::Doubt doubt{.rule = core::DoubtRule::Calories};
    const auto product = make_product("03600029145", "Oat rounds");
    for (int i = 0; i < 5; ++i)
        tally.add(product, std::vector{doubt});
    tally.add(product, {});
    CHECK(tally.labels() == 6);
    CHECK(tally.doubted() == 5);
    CHECK(tally.of(core::DoubtRule::Calories).count == 5);
    CHECK(tally.of(core::DoubtRule::Calories).samples.size() == 2);
    CHECK(!tally.takes_samples(core::DoubtRule::Calories));
    CHECK(tally.takes_samples(core::DoubtRule::Kilojoules));
    CHECK(tally.of(core::DoubtRule::Kilojoules).count == 0);
}
