// How many packages are read that are held up to a cheap camera for a while: runs of drawn frames, 30 a second, read as
// the station reads them, and what the question "Is it one of these?" would have been of the others.
//   runs_bench                        80 runs of levels 2 to 4, half a second each
//   runs_bench FROM COUNT FRAMES      runs of the numbers FROM to FROM + COUNT - 1, so many frames each
#include "kiosk/camera/added_up.h"
#include "kiosk/camera/reader.h"
#include "kiosk/camera/steady.h"
#include "tests/support/shop_runs.h"

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

namespace {

struct Counts {
    int read = 0;
    int other = 0;  ///< counted, and not the code that is there
    int listed = 0; ///< not read, and the right code is among the likely ones
    int frames = 0; ///< before a code counted, of those read
};

void follow(int level, std::uint64_t number, int frames, Counts& counts)
{
    kiosk::AddedUp added_up;
    kiosk::Steady steady;
    kiosk::Reading truth;
    for (int frame = 0; frame < frames; ++frame) {
        const auto shot = test::shot_of(test::setting_of_run(level, number, frame));
        truth = shot.truth;
        const auto when =
            kiosk::TimePoint{std::chrono::seconds{1}} + std::chrono::milliseconds{1000 * frame / test::frames_a_second};
        const auto reading = added_up.see(kiosk::look_at(shot.frame.view()), when);
        if (const auto scan = steady.see(reading, when)) {
            ++(scan->text == truth.text ? counts.read : counts.other);
            counts.frames += frame + 1;
            return;
        }
    }
    const auto likely = added_up.likely();
    counts.listed += std::ranges::find(likely, truth) != likely.end() ? 1 : 0;
}

} // namespace

int main(int count_of_words, char** words)
{
    const bool given = count_of_words == 4;
    const auto from = given ? std::strtoull(words[1], nullptr, 10) : 1;
    const int runs = given ? std::atoi(words[2]) : 80;
    const int frames = given ? std::atoi(words[3]) : test::frames_a_second / 2;
    if ((count_of_words != 1 && !given) || runs < 1 || frames < 1) {
        std::fputs("usage: runs_bench [FROM COUNT FRAMES]\n", stderr);
        return 2;
    }
    for (int level = 2; level <= test::levels; ++level) {
        Counts counts;
        for (int run = 0; run < runs; ++run)
            follow(level, from + static_cast<std::uint64_t>(run), frames, counts);
        std::printf("level %d: %d of %d runs read, after %.1f frames; %d another code; of the others the right code "
                    "was likely in %d\n",
                    level, counts.read, runs, counts.frames / std::max(1.0, double(counts.read + counts.other)),
                    counts.other, counts.listed);
        std::fflush(stdout);
    }
}
