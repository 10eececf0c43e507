// Which bars a code was printed in, as far as the reader tells: it decides how eight digits are understood.
#pragma once

namespace core {

/// The kinds of bar code that carry product numbers (ISO/IEC 15420 for EAN/UPC), and two for the rest.
enum class Symbology {
    Unknown, ///< digits without a word on their bars, as a scanner types them
    Ean13,
    UpcA,
    UpcE, ///< eight digits: number system, six, check digit; zeros left out
    Ean8,
    Itf14,
    Other, ///< bars that name no product by themselves (Code 128, QR, ...)
};

} // namespace core
