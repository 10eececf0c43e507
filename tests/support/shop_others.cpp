#include "tests/support/shop_others.h"

#include "core/code/gtin.h"
#include "tests/support/barcode_frames.h"
#include "tests/support/throws.h"

#include <algorithm>
#include <zint.h>

namespace test {
namespace {

using core::Symbology;

/// As wide as an EAN-13, bars and gaps of one to four modules, and nothing of what makes a code.
std::vector<bool> stripes(Throws& throws)
{
    std::vector<bool> modules;
    for (bool ink = true; modules.size() < 95; ink = !ink)
        modules.insert(modules.end(), 1 + throws.below(4), ink);
    return modules;
}

/// A right EAN-13 whose last digit is another's: the bars of that digit in place of the check digit.
std::vector<bool> wrong_digit(Throws& throws)
{
    const std::string body = "952" + throws.digits(9);
    std::vector<bool> modules = modules_of(Symbology::Ean13, body + core::check_digit(body));
    std::string other = body;
    while (core::check_digit(other) == core::check_digit(body))
        other = "952" + throws.digits(9);
    const std::vector<bool> taken = modules_of(Symbology::Ean13, other + core::check_digit(other));
    constexpr std::ptrdiff_t last_digit = 50 + 5 * 7;
    std::copy(taken.begin() + last_digit, taken.begin() + last_digit + 7, modules.begin() + last_digit);
    return modules;
}

void put_rows(const std::vector<std::vector<bool>>& rows, Scene& scene)
{
    PrintedCode code = scene.codes.front();
    scene.codes.clear();
    if (rows.size() == 1) {
        code.modules = rows.front();
        scene.codes.push_back(std::move(code));
        return;
    }
    // A square code: one row of modules over the other.
    code.bar_height = 1;
    code.figures_below = false;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        code.modules = rows[row];
        code.y = static_cast<double>(row) - static_cast<double>(rows.size() - 1) / 2;
        scene.codes.push_back(code);
    }
}

/// A second product beside, above or below the first, and far enough away to be another package's.
void put_second(OtherSetting& made, Throws& throws)
{
    Scene& scene = made.setting.scene;
    PrintedCode second = scene.codes.front();
    const kiosk::Reading truth{some_digits(Symbology::Ean13, throws.below(1000000) + 7), Symbology::Ean13};
    second.modules = modules_of(truth.symbology, truth.text);
    (throws.below(2) == 0 ? second.x : second.y) = throws.below(2) == 0 ? 130 : -130;
    scene.codes.push_back(std::move(second));
    made.truths = {made.setting.truth, truth};
}

std::vector<std::vector<bool>> rows_of_other(Other other, Throws& throws)
{
    switch (other) {
    case Other::Stripes:
        return {stripes(throws)};
    case Other::Digits:
        return {wrong_digit(throws)};
    case Other::Code128:
        return rows_of(BARCODE_CODE128, throws.below(2) == 0 ? throws.digits(12) : throws.letters(8));
    case Other::Code39:
        return rows_of(BARCODE_CODE39, throws.letters(6));
    case Other::Itf:
        return rows_of(BARCODE_C25INTER, throws.digits(throws.below(2) == 0 ? 10 : 12));
    case Other::DataBar: // the number of a product: no camera of ours reads it, so it must not be read as another one
        return rows_of(BARCODE_DBAR_OMN, "0952" + throws.digits(9));
    case Other::Qr:
        return rows_of(BARCODE_QRCODE, "https://example.org/" + throws.letters(12));
    case Other::DataMatrix:
        return rows_of(BARCODE_DATAMATRIX, throws.letters(10));
    case Other::Nothing:
    case Other::TwoProducts:
        break;
    }
    return {};
}

} // namespace

const char* name_of(Other other)
{
    constexpr const char* names[] = {"nothing",     "stripes", "a wrong check digit", "Code 128",    "Code 39", "ITF",
                                     "GS1 DataBar", "QR Code", "Data Matrix",         "two products"};
    return names[static_cast<std::size_t>(other)];
}

OtherSetting other_setting_of(Other other, int level, std::uint64_t number, FrameSize size)
{
    OtherSetting made{setting_of(level, number, size), {}};
    Throws throws(number * 64 + static_cast<std::uint64_t>(other) * 4 + static_cast<std::uint64_t>(level));
    if (other == Other::TwoProducts)
        put_second(made, throws);
    else if (other == Other::Nothing)
        made.setting.scene.codes.clear();
    else
        put_rows(rows_of_other(other, throws), made.setting.scene);
    return made;
}

} // namespace test
