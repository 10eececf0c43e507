// Two hundred scans, typed with no pause between the keys: two hundred right answers on the screen.
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/station.h"
#include "tests/support/words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace {

using test::DemoProduct;
using test::TraceLine;

constexpr std::size_t scans = 200;
constexpr std::size_t looked_at = 20; // every so many: the screen itself is read

/// The nth scan: all products in turn, in a stride that has no common factor with most counts.
const DemoProduct& product_of(const std::vector<DemoProduct>& products, std::size_t nth)
{
    return products[nth * 37 % products.size()];
}

/// Whether the frame shows the product: on a side of the state, and by its name in what was drawn.
bool shows(const TraceLine& frame, const DemoProduct& product)
{
    return (frame.left == product.gtin || frame.right == product.gtin) &&
           frame.words.find(product.name) != std::string::npos;
}

/// Whether somebody who reads the screen finds the product's name there.
bool readable(const std::string& picture, const DemoProduct& product)
{
    const auto ended =
        test::run({"tesseract", picture, "stdout", "-l", "eng", "--psm", "11"}, {{"OMP_THREAD_LIMIT", "1"}});
    const auto read = test::plain_words(ended.out);
    CAPTURE(ended.out);
    return std::ranges::all_of(test::plain_words(product.name), [&](const std::string& word) {
        const std::size_t most = word.size() >= 8 ? 2 : 1;
        return std::ranges::any_of(read, [&](const auto& seen) { return test::letters_apart(word, seen) <= most; });
    });
}

void print_latency(std::vector<long> microseconds)
{
    std::ranges::sort(microseconds);
    const auto at = [&](std::size_t percent) {
        return static_cast<double>(microseconds[(microseconds.size() - 1) * percent / 100]) / 1'000;
    };
    MESSAGE("from the last key to the picture, " << microseconds.size() << " scans: median " << at(50) << " ms, p99 "
                                                 << at(99) << " ms, longest " << at(100) << " ms");
}

} // namespace

TEST_CASE("end to end: two hundred scans at full speed, each answered on the screen with the right product")
{
    const auto products = test::demo_products();
    REQUIRE(products.size() >= 80);
    test::Station station;
    std::vector<long> latencies;
    std::size_t right = 0;
    std::size_t read = 0;
    for (std::size_t i = 0; i < scans; ++i) {
        const auto& product = product_of(products, i);
        CAPTURE(product.name);
        station.scan(product.digits);
        const auto answer = station.answer(static_cast<long>(i) + 1);
        REQUIRE(answer);
        const auto frame = station.frame_of_notice(answer->notice);
        REQUIRE(frame);
        CHECK(shows(*frame, product));
        right += shows(*frame, product) ? 1 : 0;
        latencies.push_back(frame->microseconds - answer->microseconds);
        if (i % looked_at == looked_at - 1) {
            const bool good = readable(station.screenshot("scan"), product);
            CHECK(good);
            read += good ? 1 : 0;
        }
    }
    print_latency(latencies);
    MESSAGE(right << " of " << scans << " screens right; the product's name read off " << read << " of "
                  << scans / looked_at << " screenshots");
    CHECK(right == scans);
}

TEST_CASE("end to end: two hundred scans in one go, nobody waiting for the screen: two hundred answers in their order")
{
    const auto products = test::demo_products();
    test::Station station;
    constexpr std::size_t at_once = 20;
    for (std::size_t i = 0; i < scans; i += at_once) {
        std::vector<std::string> keys;
        for (std::size_t j = i; j < i + at_once; ++j) {
            for (const char digit : product_of(products, j).digits)
                keys.emplace_back(1, digit);
            keys.emplace_back("Return");
        }
        station.press(std::move(keys));
    }
    REQUIRE(station.answer(static_cast<long>(scans)));
    std::size_t right = 0;
    for (const auto& line : station.trace()) {
        if (line.kind != "answer")
            continue;
        const auto& product = product_of(products, static_cast<std::size_t>(line.number) - 1);
        CAPTURE(line.words);
        const bool good =
            line.words.starts_with(product.digits + " | ") && (line.left == product.gtin || line.right == product.gtin);
        CHECK(good);
        right += good ? 1 : 0;
    }
    CHECK(right == scans);
}
