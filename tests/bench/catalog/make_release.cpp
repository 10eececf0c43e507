// Writes a generated release into a folder: make_release FOLDER [PRODUCTS].
#include "tests/support/release_maker.h"

#include <cstdio>
#include <cstdlib>
#include <exception>

int main(int count, char** words)
{
    if (count < 2) {
        std::fprintf(stderr, "make_release FOLDER [PRODUCTS]\n");
        return 2;
    }
    try {
        test::ReleaseShape shape;
        shape.products = count > 2 ? std::strtoull(words[2], nullptr, 10) : 400'000;
        const auto made = test::make_release(shape, words[1]);
        std::printf("%zu records, %zu nutrient rows, %.1f MB\n", made.records, made.nutrient_rows,
                    static_cast<double>(made.bytes) / 1e6);
        return 0;
    } catch (const std::exception& broken) {
        std::fprintf(stderr, "%s\n", broken.what());
        return 2;
    }
}
