// Draws bar codes as a camera would see them: turned, blurred, noisy, badly lit. The bars come from zint, a library
// that shares nothing with the one that reads them; everything else is computed here, the same on every run.
#pragma once

#include "core/code/symbology.h"
#include "kiosk/camera/frame.h"

#include <cstdint>
#include <string>
#include <vector>

namespace test {

/// One picture of one code.
struct Picture {
    core::Symbology symbology = core::Symbology::Ean13;
    std::string digits{}; ///< as printed, with the check digit: 13, 12, 8 (EAN-8, UPC-E) or 14
    int width = 640;      ///< of the frame, in pixels
    int height = 480;
    double module = 3;      ///< width of the narrowest bar, in pixels
    double bar_height = 60; ///< in modules; a printed EAN-13 has 69
    double degrees = 0;     ///< turned clockwise about the middle
    double slant = 0;       ///< seen from the side: the far edge is smaller by this part (0.2: a fifth)
    double blur = 0;        ///< out of focus: standard deviation of a bell curve, in pixels
    double smear = 0;       ///< moved sideways while the shutter was open, in pixels
    double noise = 0;       ///< standard deviation, in grey levels
    double ink = 30;        ///< grey of the bars
    double paper = 225;     ///< grey of the label
    double around = 140;    ///< grey of what is around the label
    double shade = 0;       ///< the light falls off by this part from the left edge to the right one
    std::uint64_t seed = 1; ///< of the noise
};

/// The bars and gaps of a code, one entry a module, true for ink, without the light margins.
/// Throws std::invalid_argument for digits that this kind of code cannot hold.
[[nodiscard]] std::vector<bool> modules_of(core::Symbology symbology, const std::string& digits);

/// The same for codes that name no product: `zint_kind` is one of zint's BARCODE_ numbers. Codes of one row have one
/// row here. Throws std::invalid_argument as above.
[[nodiscard]] std::vector<std::vector<bool>> rows_of(int zint_kind, const std::string& text);

/// The picture as the camera hands it over.
[[nodiscard]] kiosk::Frame draw(const Picture& picture);

/// A picture of the same size with no code in it, only grey and noise.
[[nodiscard]] kiosk::Frame draw_empty(const Picture& picture);

/// Writes a picture as a PGM file, or as bare grey bytes with each row filled up to four.
void write_pgm(const kiosk::Frame& frame, const std::string& path);
void write_raw(const kiosk::Frame& frame, const std::string& path);

/// A right number of this kind for any seed, the same for the same seed: under GS1's demonstration prefix 952 where the
/// kind has room for it.
[[nodiscard]] std::string some_digits(core::Symbology symbology, std::uint64_t seed);

} // namespace test
