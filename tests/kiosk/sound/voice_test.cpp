#include "kiosk/sound/sound.h"
#include "tests/support/disk_card.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <thread>

namespace {

using kiosk::Milliseconds;
using kiosk::Sound;
using kiosk::SpeechNews;
using kiosk::Tone;
using Samples = std::vector<std::int16_t>;

/// Waits until it is so, for half a minute: longer than anything here takes.
template<class Question>
bool comes_true(const Question& question)
{
    for (int i = 0; i < 6'000; ++i) {
        if (question())
            return true;
        std::this_thread::sleep_for(Milliseconds{5});
    }
    return question();
}

/// What was reported so far.
class Reports {
public:
    explicit Reports(Sound& sound) : sound_(sound) {}
    bool come(SpeechNews wanted)
    {
        return comes_true([&] {
            for (const auto& heard : sound_.speech_news())
                all_.push_back(heard);
            return std::ranges::find(all_, wanted) != all_.end();
        });
    }
    [[nodiscard]] const std::vector<SpeechNews>& all() const { return all_; }

private:
    Sound& sound_;
    std::vector<SpeechNews> all_;
};

constexpr auto begun = SpeechNews::What::Begun;
constexpr auto spoken = SpeechNews::What::Spoken;
constexpr auto unspoken = SpeechNews::What::Unspoken;

const kiosk::Utterance oats{1, "Oats and honey, 8 grams.", "en-us", 100};

/// The synthesizer lets the pitch tremble by chance: no two sentences have the same samples.
constexpr double chance = 0.02;

kiosk::Utterance hours_of_words()
{
    kiosk::Utterance utterance{7, "", "en-us", 100};
    for (int i = 0; i < 10'000; ++i)
        utterance.words += "Sodium, 190 milligrams. ";
    return utterance;
}

/// The tone as the usual volume plays it, without its silence.
Samples heard_tone(Tone tone)
{
    auto samples = kiosk::samples_of(tone);
    for (auto& sample : samples)
        sample = static_cast<std::int16_t>(sample / 2);
    return test::without_silence(samples);
}

/// Says something and plays it to its end.
Samples heard_words(const kiosk::Utterance& utterance, int volume)
{
    const test::DiskCard card;
    {
        Sound sound;
        sound.set_volume(volume);
        sound.say(utterance);
        CHECK(Reports(sound).come({utterance.id, spoken}));
    }
    return test::without_silence(card.played());
}

/// Where the tone begins; the end when it was not heard whole.
std::size_t place_of(const Samples& tone, const Samples& heard)
{
    const auto at = std::search(heard.begin(), heard.end(), tone.begin(), tone.end());
    return static_cast<std::size_t>(at - heard.begin());
}

bool tone_came(const test::DiskCard& card, Tone tone)
{
    return comes_true([&] {
        const auto heard = test::without_silence(card.played());
        return place_of(heard_tone(tone), heard) < heard.size();
    });
}

} // namespace

TEST_CASE("voice: a sentence is reported when it begins and when it was heard to the end, and wakes the loop")
{
    const test::DiskCard card;
    std::atomic<int> woken{0};
    Sound sound({}, [&woken] { ++woken; });
    Reports reports(sound);
    sound.say(oats);
    REQUIRE(reports.come({1, spoken}));
    CHECK(reports.all() == std::vector<SpeechNews>{{1, begun}, {1, spoken}});
    CHECK(comes_true([&] { return woken >= 1; })); // one wake may bring both
    sound.say({2, "And again.", "es-419", 100});
    CHECK(reports.come({2, spoken}));
}

TEST_CASE("voice: each step of volume doubles speech and tones, and none is cut at full scale")
{
    const kiosk::Utterance word{1, "Oats.", "en-us", 100};
    constexpr double chance_of_peaks = 0.2; // a step more or less is 0.5 or 1
    const int loudest = test::peak(heard_words(word, 5));
    CHECK(loudest > 8'000);
    CHECK(loudest < 32'767);
    const auto times = [&](int peak) { return doctest::Approx(peak).epsilon(chance_of_peaks); };
    for (int step = 1; step < 5; ++step) {
        CAPTURE(step);
        CHECK(test::peak(heard_words(word, step)) * (1 << (5 - step)) == times(loudest));
    }
    CHECK(test::peak(heard_words(word, 99)) == times(loudest));
    CHECK(test::peak(heard_words(word, 0)) * 16 == times(loudest));
}

TEST_CASE("voice: tones are as loud as their step says, in every sample")
{
    for (int step = 1; step <= 5; ++step) {
        CAPTURE(step);
        const test::DiskCard card;
        auto tone = kiosk::samples_of(Tone::Refused);
        for (auto& sample : tone)
            sample = static_cast<std::int16_t>(sample * (1 << step) / 16);
        tone = test::without_silence(tone);
        Sound sound;
        sound.set_volume(step);
        sound.play(Tone::Refused);
        CHECK(comes_true([&] { return test::without_silence(card.played()) == tone; }));
    }
}

TEST_CASE("voice: a tone amid the words is heard first and whole, and no word is lost")
{
    const kiosk::Utterance label{1, "Oats and honey, 8 grams of added sugars, 190 milligrams of sodium.", "en-us", 100};
    const auto words = heard_words(label, 3);
    const auto tone = heard_tone(Tone::Found);
    const test::DiskCard card;
    {
        Sound sound;
        Reports reports(sound);
        sound.say(label);
        REQUIRE(reports.come({1, begun}));
        REQUIRE(comes_true([&] { return test::peak(card.played()) > 0; }));
        sound.play(Tone::Found);
        CHECK(reports.come({1, spoken}));
    }
    const auto heard = test::without_silence(card.played());
    const auto at = place_of(tone, heard);
    REQUIRE(at < heard.size());
    CHECK(at > 0);
    CHECK(at + tone.size() < words.size()); // amid the words, not behind them
    CHECK(static_cast<double>(heard.size() - tone.size()) ==
          doctest::Approx(static_cast<double>(words.size())).epsilon(chance));
}

TEST_CASE("voice: hush ends the words and not the tone, and what is said next is heard")
{
    const test::DiskCard card;
    {
        Sound sound;
        Reports reports(sound);
        sound.say(hours_of_words());
        REQUIRE(reports.come({7, begun}));
        REQUIRE(comes_true([&] { return test::peak(card.played()) > 0; }));
        sound.play(Tone::Refused);
        sound.hush();
        REQUIRE(tone_came(card, Tone::Refused));
        sound.say({8, "Oats.", "en-us", 100});
        CHECK(reports.come({8, spoken}));
        CHECK(std::ranges::find(reports.all(), SpeechNews{7, spoken}) == reports.all().end());
    }
    const auto heard = test::without_silence(card.played());
    const auto tone = heard_tone(Tone::Refused);
    const auto behind = heard.size() - place_of(tone, heard) - tone.size();
    const auto alone = heard_words({8, "Oats.", "en-us", 100}, 3).size();
    CHECK(static_cast<double>(behind) == doctest::Approx(static_cast<double>(alone)).epsilon(chance));
}

TEST_CASE("voice: a new sentence cuts off the one before")
{
    const test::DiskCard card;
    Sound sound;
    Reports reports(sound);
    sound.say(hours_of_words());
    REQUIRE(reports.come({7, begun}));
    sound.say(oats);
    CHECK(reports.come({1, spoken}));
    CHECK(reports.all() == std::vector<SpeechNews>{{7, begun}, {1, begun}, {1, spoken}});
}

TEST_CASE("voice: a pause holds the words and lets tones through, and no word is lost")
{
    const auto words = heard_words(oats, 3);
    const test::DiskCard card;
    {
        Sound sound;
        Reports reports(sound);
        sound.say(oats);
        REQUIRE(reports.come({1, begun}));
        REQUIRE(comes_true([&] { return test::peak(card.played()) > 0; }));
        sound.pause(true);
        sound.play(Tone::Found);
        REQUIRE(tone_came(card, Tone::Found));
        sound.set_volume(4);
        sound.set_volume(3);
        sound.pause(false);
        CHECK(reports.come({1, spoken}));
    }
    const auto heard = test::without_silence(card.played()).size() - heard_tone(Tone::Found).size();
    CHECK(static_cast<double>(heard) == doctest::Approx(static_cast<double>(words.size())).epsilon(chance));
}

TEST_CASE("voice: in a pause it can be hushed, and the next sentence waits for its end")
{
    const test::DiskCard card;
    {
        Sound sound;
        Reports reports(sound);
        sound.say(hours_of_words());
        REQUIRE(reports.come({7, begun}));
        sound.pause(true);
        sound.hush();
        sound.play(Tone::Found);
        REQUIRE(tone_came(card, Tone::Found));
        sound.say(oats);
        REQUIRE(reports.come({1, begun}));
        sound.pause(false);
        CHECK(reports.come({1, spoken}));
    }
    CHECK(test::peak(card.played()) > 0);
}

TEST_CASE("voice: without a card or a voice the time passes all the same, and is reported as unspoken")
{
    SUBCASE("no card")
    {
        setenv("SDL_AUDIODRIVER", "there_is_no_such_driver", 1);
        Sound sound;
        Reports reports(sound);
        sound.say(hours_of_words());
        REQUIRE(reports.come({7, begun}));
        sound.set_volume(5);
        sound.play(Tone::Found);
        sound.say({2, "Oats", "en-us", 200}); // cuts the hours off
        CHECK(reports.come({2, unspoken}));
        CHECK(reports.all() == std::vector<SpeechNews>{{7, begun}, {2, begun}, {2, unspoken}});
        unsetenv("SDL_AUDIODRIVER");
    }
    SUBCASE("no such voice")
    {
        const test::DiskCard card;
        Sound sound;
        Reports reports(sound);
        sound.say({3, "Oats", "no-such-voice", 200});
        CHECK(reports.come({3, unspoken}));
        sound.say(oats);
        CHECK(reports.come({1, spoken}));
    }
    CHECK(kiosk::time_to_say({1, std::string(175 * 6, 'a'), "", 100}) > Milliseconds{55'000});
    CHECK(kiosk::time_to_say({1, std::string(175 * 6, 'a'), "", 100}) < Milliseconds{65'000});
    CHECK(kiosk::time_to_say({1, "", "", 0}) == Milliseconds{0});
}

TEST_CASE("voice: the station ends amid the words and in a pause")
{
    const test::DiskCard card;
    for (const bool paused : {false, true}) {
        Sound sound;
        Reports reports(sound);
        sound.pause(paused);
        sound.say(hours_of_words());
        CHECK(reports.come({7, begun}));
    }
}
