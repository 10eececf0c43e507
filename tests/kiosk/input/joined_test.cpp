#include "kiosk/input/joined.h"

#include <doctest/doctest.h>

using kiosk::take_apart;
using Parts = std::vector<std::string>;

// Numbers from the GS1 General Specifications. That 96385074 and 96385074 are two codes and no longer one is
// arithmetic.
TEST_CASE("joined: a row of codes is taken apart where there is one way only")
{
    CHECK(take_apart("95212345432139521234543213") == Parts{"9521234543213", "9521234543213"});
    CHECK(take_apart("9521234543213614141007349") == Parts{"9521234543213", "614141007349"});
    CHECK(take_apart("9638507496385074") == Parts{"96385074", "96385074"});
    CHECK(take_apart("9521234543213") == Parts{});              // one code is not a row
    CHECK(take_apart("95212345432149521234543213") == Parts{}); // the first is wrong
    CHECK(take_apart("952123454321395212345432") == Parts{});   // the second is cut off
    CHECK(take_apart("") == Parts{});
    CHECK(take_apart(std::string(512, '0')) == Parts{}); // zeros pass every check: more than one way
    CHECK(take_apart("MEMBER-0042-96385074") == Parts{});
}
