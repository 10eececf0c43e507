#include "kiosk/sound/speech.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <string>

namespace {

using kiosk::speak;
using kiosk::Speech;

struct Said {
    Speech ended = Speech::Failed;
    std::size_t samples = 0;
    int loudest = 0;
};

/// Says it to the end, or until so many samples came.
Said said(const std::string& words, const std::string& voice, int rate_percent = 100,
          std::size_t enough = std::string::npos)
{
    Said said;
    said.ended = speak(words, voice, rate_percent, [&](std::span<const std::int16_t> samples) {
        said.samples += samples.size();
        for (const int sample : samples)
            said.loudest = std::max(said.loudest, std::abs(sample));
        return said.samples < enough;
    });
    return said;
}

constexpr std::size_t second = kiosk::speech_samples_a_second;

} // namespace

TEST_CASE("speech: every voice of the station is heard")
{
    struct Case {
        const char* voice;
        const char* words;
    };
    const Case cases[] = {
        {"en-us", "8 grams of added sugars"},
        {"es-419", "8 gramos de azúcares añadidos"},
        {"vi", "8 gam đường thêm vào"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.voice);
        const auto once = said(c.words, c.voice);
        CHECK(once.ended == Speech::Done);
        CHECK(once.samples > second / 2);
        CHECK(once.samples < 5 * second);
        CHECK(once.loudest > 8'000);
        CHECK(said(c.words, c.voice, 200).samples < once.samples * 3 / 4);
        CHECK(said(c.words, c.voice, 50).samples > once.samples * 5 / 4);
    }
    CHECK(said("hello", "no-such-voice").ended == Speech::Failed);
    CHECK(said("hello", "").ended == Speech::Failed);
}

TEST_CASE("speech: it stops when it is told to, and speaks again after that")
{
    std::string long_words;
    for (int i = 0; i < 1'000; ++i)
        long_words += "Sodium, 190 milligrams. ";
    const auto stopped = said(long_words, "en-us", 100, 1);
    CHECK(stopped.ended == Speech::Stopped);
    CHECK(stopped.samples < second / 4); // one piece, not one more
    CHECK(said("hello", "en-us").ended == Speech::Done);
}

TEST_CASE("speech: hostile words neither break nor hang it")
{
    struct Case {
        const char* why;
        std::string words;
    };
    const Case cases[] = {
        {"nothing", ""},
        {"a word of 100,000 letters", std::string(100'000, 'a')},
        {"100,000 digits", std::string(100'000, '7')},
        {"100,000 signs", std::string(100'000, '<')},
        {"a zero inside", std::string("oats\0and honey", 14)},
        {"every control", "oats \x01\x02\x07\x1b\x7f\xc2\x85 and honey"},
        {"an order to the synthesizer itself: 1, number, letter", "oats \x01\x35V and \x01\x39\x39\x39S honey"},
        {"mark-up", "<speak><break time=\"99999s\"/><audio src=\"/etc/passwd\"/>oats</speak>"},
        {"phonemes", "[[h@'loU]] oats"},
        {"bytes that are no UTF-8", "oats \xff\xfe\x80\xc0\xaf\xed\xa0\x80\xf5\x80\x80\x80 honey \xe2\x82"},
        {"letters past the first plane, and marks without a letter", "\xf0\x9f\xa5\x9c \xcc\x81\xcc\x81\xcc\x81 honey"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(said(c.words, "en-us", 100, 20 * second).ended != Speech::Failed);
    }
}

TEST_CASE("speech: what is no UTF-8 and what controls becomes a blank")
{
    using kiosk::clean_words;
    CHECK(clean_words("azúcares añadidos · đường ½") == "azúcares añadidos · đường ½");
    CHECK(clean_words("a\x01z\x7f\n") == "a z  ");
    CHECK(clean_words("a\xc2\x85z") == "a z");        // a control of C1
    CHECK(clean_words("a\xc2\xa0z") == "a\xc2\xa0z"); // the first that is none: a blank that holds
    CHECK(clean_words("\xff"
                      "a\xc3") == " a ");
    CHECK(clean_words("\xc0\xaf") == "  ");           // "/" in too many bytes
    CHECK(clean_words("\xe0\x80\xaf") == "   ");      // the same in three
    CHECK(clean_words("\xed\xa0\x80") == "   ");      // half of a pair of UTF-16
    CHECK(clean_words("\xf4\x90\x80\x80") == "    "); // past the last character
    CHECK(clean_words("\xf0\x9f\xa5\x9c") == "\xf0\x9f\xa5\x9c");
}
