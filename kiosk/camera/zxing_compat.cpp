#include "kiosk/camera/zxing_compat.h"

// 1.4 gives wide text and says so in a message unless this is set; 2.3 does not know it.
#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>

#include <cstdint>
#include <string>

namespace kiosk {
namespace {

using core::Symbology;
using ZXing::BarcodeFormat;

#if __has_include(<ZXing/ReaderOptions.h>)
using Options = ZXing::ReaderOptions;
#else
using Options = ZXing::DecodeHints;
#endif

Options options_for(const ZxingSettings& settings)
{
    Options options;
    ZXing::BarcodeFormats formats =
        BarcodeFormat::EAN13 | BarcodeFormat::EAN8 | BarcodeFormat::UPCA | BarcodeFormat::UPCE;
    if (settings.cases_too)
        formats |= BarcodeFormat::ITF;
    if (settings.product_codes_only)
        options.setFormats(formats);
    options.setTryHarder(settings.try_harder);
    options.setTryRotate(settings.try_rotate);
    options.setTryDownscale(settings.try_downscale);
    options.setMinLineCount(static_cast<std::uint8_t>(settings.agreeing_lines));
#if __has_include(<ZXing/ReaderOptions.h>)
    options.setTryInvert(false); // light bars on dark paper are no product code; 1.4 does not look for them either
#endif
    return options;
}

Symbology symbology_of(BarcodeFormat format)
{
    if (format == BarcodeFormat::EAN13)
        return Symbology::Ean13;
    if (format == BarcodeFormat::EAN8)
        return Symbology::Ean8;
    if (format == BarcodeFormat::UPCA)
        return Symbology::UpcA;
    if (format == BarcodeFormat::UPCE)
        return Symbology::UpcE;
    if (format == BarcodeFormat::ITF)
        return Symbology::Itf14;
    return Symbology::Other;
}

} // namespace

std::optional<Reading> zxing_read(const GreyView& picture, const ZxingSettings& settings)
{
    const ZXing::ImageView view(picture.pixels, picture.width, picture.height, ZXing::ImageFormat::Lum, picture.stride);
    // ReadBarcode, never ReadBarcodes: that one of 1.4 ends the process by an assertion when it finds the same code in
    // the picture and in its smaller copy.
    const auto result = ZXing::ReadBarcode(view, options_for(settings));
    if (!result.isValid())
        return std::nullopt;
    return Reading{result.text(), symbology_of(result.format())};
}

} // namespace kiosk
