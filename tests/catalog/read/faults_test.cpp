#include "catalog/read/faults.h"

#include <doctest/doctest.h>

using catalog::Faults;
using core::Error;

TEST_CASE("faults: all are counted, the first ones kept, in order")
{
    Faults faults;
    CHECK(faults.empty());
    for (std::size_t row = 1; row <= Faults::most_kept + 50; ++row)
        faults.add({Error::Kind::BadValue, "", core::Place{"sheet", row, "", "", ""}});
    CHECK(faults.count() == Faults::most_kept + 50);
    REQUIRE(faults.kept().size() == Faults::most_kept);
    CHECK(faults.kept().back().place.row == Faults::most_kept);
    Faults all;
    all.add({Error::Kind::Empty, "", {}});
    all.add(faults);
    CHECK(all.count() == Faults::most_kept + 51);
    CHECK(all.kept().size() == Faults::most_kept);
}

TEST_CASE("faults: a long cell is cut between two letters")
{
    Faults faults;
    std::string cell;
    for (int i = 0; i < 1000; ++i)
        cell += "xé";
    faults.add({Error::Kind::BadValue, "", core::Place{"sheet", 1, "name", cell, ""}});
    CHECK(faults.kept()[0].place.found == cell.substr(0, 60) + "...");
    faults.add({Error::Kind::BadValue, "", core::Place{"sheet", 1, "name", cell.substr(1), ""}});
    CHECK(faults.kept()[1].place.found == cell.substr(1, 60) + "...");
    faults.add({Error::Kind::BadValue, "", core::Place{"sheet", 1, "name", "aa" + cell.substr(1), ""}});
    CHECK(faults.kept()[2].place.found == "aa" + cell.substr(1, 57) + "...");
}
