// The long run: reads small drawn frames, with a product code in them and without, and looks for a code that is not
// there.
//   no_wrong_code FROM COUNT    frames of the numbers FROM to FROM + COUNT - 1, eight of each
// Prints each wrong code, and how many frames of which kind were read. Exit status 0 when none was read wrong.
#include "kiosk/camera/reader.h"
#include "tests/support/shop_others.h"

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <span>
#include <string>

namespace {

struct Counts {
    long frames = 0;
    long read = 0;
    long wrong = 0;
};

using CountsByKind = std::map<std::string, Counts>;

void count(const kiosk::Frame& frame, std::span<const kiosk::Reading> truths, const std::string& kind, int level,
           std::uint64_t number, CountsByKind& counts)
{
    Counts& of_kind = counts[kind];
    ++of_kind.frames;
    const auto reading = kiosk::read(frame.view());
    if (!reading)
        return;
    if (std::ranges::find(truths, *reading) != truths.end()) {
        ++of_kind.read;
        return;
    }
    ++of_kind.wrong;
    std::printf("WRONG: %s, level %d, number %llu: read %s\n", kind.c_str(), level,
                static_cast<unsigned long long>(number), reading->text.c_str());
}

/// A product and something else at each level.
void count_number(std::uint64_t number, CountsByKind& counts)
{
    for (int level = 1; level <= test::levels; ++level) {
        const auto product = test::shot_of(test::setting_of(level, number, test::small_frame));
        count(product.frame, {&product.truth, 1}, "product", level, number, counts);
        const auto at = number * test::levels + static_cast<std::uint64_t>(level);
        const auto other = test::all_others[at % test::all_others.size()];
        const auto setting = test::other_setting_of(other, level, number, test::small_frame);
        count(test::shot_of(setting.setting).frame, setting.truths, test::name_of(other), level, number, counts);
    }
}

bool print(const CountsByKind& counts, std::uint64_t last)
{
    Counts all;
    for (const auto& [kind, of_kind] : counts) {
        std::printf("%-24s %7ld frames, %7ld read, %ld wrong\n", kind.c_str(), of_kind.frames, of_kind.read,
                    of_kind.wrong);
        all.frames += of_kind.frames;
        all.wrong += of_kind.wrong;
    }
    std::printf("up to number %llu: %ld frames, %ld wrong\n", static_cast<unsigned long long>(last), all.frames,
                all.wrong);
    std::fflush(stdout);
    return all.frames > 0 && all.wrong == 0;
}

} // namespace

int main(int count_of_words, char** words)
{
    if (count_of_words != 3) {
        std::fputs("usage: no_wrong_code FROM COUNT\n", stderr);
        return 2;
    }
    const std::uint64_t from = std::strtoull(words[1], nullptr, 10);
    const std::uint64_t numbers = std::strtoull(words[2], nullptr, 10);
    constexpr std::uint64_t told_every = 500;
    CountsByKind counts;
    for (std::uint64_t number = from; number < from + numbers; ++number) {
        count_number(number, counts);
        if ((number - from) % told_every == told_every - 1)
            print(counts, number);
    }
    return print(counts, from + numbers - 1) ? 0 : 1;
}
