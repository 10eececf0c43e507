#include "kiosk/input/aim.h"

#include <doctest/doctest.h>

#include <string>

using core::Symbology;
using kiosk::Identified;
using kiosk::identify;

// Source: ISO/IEC 15424, as listed in GS1 General Specifications; rows with data from the tests of the GS1 Barcode
// Syntax Engine (scandata.c) and of ZXing-C++ (CreateBarcodeTest.cpp).
TEST_CASE("aim: the identifier says which bars, and is taken off")
{
    struct Case {
        std::string why;
        const char* typed;
        Identified expected;
    };
    const Case cases[] = {
        {"EAN-13", "]E02112345678900", {"2112345678900", Symbology::Ean13}},
        {"UPC-A: 13 digits are sent", "]E00416000336108", {"0416000336108", Symbology::Ean13}},
        {"UPC-E: sent expanded", "]E00001234000057", {"0001234000057", Symbology::Ean13}},
        {"EAN-8", "]E402345673", {"02345673", Symbology::Ean8}},
        {"EAN-8 that would pass as UPC-E", "]E401234565", {"01234565", Symbology::Ean8}},
        {"a five-digit add-on is cut off", "]E3000012000003412345", {"0000120000034", Symbology::Ean13}},
        {"ITF-14", "]I115400141288763", {"15400141288763", Symbology::Itf14}},
        {"ITF of another length", "]I11540014128", {"1540014128", Symbology::Other}},
        {"no data", "]E0", {"", Symbology::Other}},
        {"too short", "]E0123456789012", {"123456789012", Symbology::Other}},
        {"too long", "]E012345678901234", {"12345678901234", Symbology::Other}},
        {"letters", "]E01234ABC890123", {"1234ABC890123", Symbology::Other}},
        {"7 digits", "]E41234567", {"1234567", Symbology::Other}},
        {"an add-on alone", "]E112", {"12", Symbology::Other}},
        {"GS1 DataBar is a small e",
         "]e00112312312312333",
         {"\x1d"
          "0112312312312333",
          Symbology::Other}},
        {"GS1-128",
         "]C1011231231231233310ABC",
         {"\x1d"
          "011231231231233310ABC",
          Symbology::Other}},
        {"GS1 DataMatrix",
         "]d20112312312312333",
         {"\x1d"
          "0112312312312333",
          Symbology::Other}},
        {"GS1 QR Code",
         "]Q30112312312312333",
         {"\x1d"
          "0112312312312333",
          Symbology::Other}},
        {"GS1 DotCode",
         "]J10112312312312333",
         {"\x1d"
          "0112312312312333",
          Symbology::Other}},
        {"one mark is enough",
         "]C1\x1d"
         "0112312312312333",
         {"\x1d"
          "0112312312312333",
          Symbology::Other}},
        {"Code 128 without the mark", "]C00112312312312333", {"0112312312312333", Symbology::Other}},
        {"QR Code", "]Q1TESTING", {"TESTING", Symbology::Other}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(identify(c.typed) == c.expected);
    }
    for (const char* none : {"", "]", "]E", "9521234543213", "E09521234543213", "]90", "]E-9521234543213"}) {
        CAPTURE(none);
        CHECK_FALSE(identify(none));
    }
}
