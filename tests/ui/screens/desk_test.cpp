// The leader desk: each touch asks for one thing, the two answers to a fingerprint are equal, and Welcome leads there
// only where the desk is open.
#include "tests/support/headless.h"
#include "tests/ui/desk_samples.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

namespace {

using ui::AskDesk;
using ui::ScreenId;
using ui::TextId;

/// The first sample of the desk on this screen.
ui::State sample(ScreenId screen)
{
    std::vector<test::NamedState> states;
    test::add_desk_states(states, test::language("en"));
    const auto found = std::ranges::find_if(states, [&](const auto& named) { return named.state.screen == screen; });
    REQUIRE(found != states.end());
    return found->state;
}

} // namespace

TEST_CASE("desk: Welcome leads to it only where it is open")
{
    test::Headless screen;
    auto state = test::state_of(ScreenId::Welcome, test::language("en"));
    CHECK_THROWS_AS(screen.tap(state, TextId::desk_title), std::out_of_range);
    state.desk_open = true;
    CHECK(screen.tap(state, TextId::desk_title) == ui::Actions{AskDesk{ui::OpenDesk{}}});
}

TEST_CASE("desk: every row and every button asks for its own")
{
    test::Headless screen({1920, 1080});
    const auto home = sample(ScreenId::Desk);
    CHECK(screen.tap(home, "Files on a stick") == ui::Actions{AskDesk{ui::LookForFiles{}}});
    CHECK(screen.tap(home, "Look through the labels") == ui::Actions{AskDesk{ui::AuditCatalog{}}});
    CHECK(screen.tap(home, "Undo the last load") == ui::Actions{AskDesk{ui::UndoLoad{}}});
    CHECK(screen.tap(home, "Go back to what was in place before") == ui::Actions{AskDesk{ui::UndoInstall{}}});
    CHECK(screen.tap(home, "What came of it") == ui::Actions{AskDesk{ui::OpenReport{}}});
    const auto files = sample(ScreenId::DeskFiles);
    CHECK(screen.tap(files, TextId::desk_look_again) == ui::Actions{AskDesk{ui::LookForFiles{}}});
    CHECK(screen.tap(files, "winter.bundle") == ui::Actions{AskDesk{ui::OpenFile{2}}});
    const auto file = sample(ScreenId::DeskFile);
    CHECK(screen.tap(file, TextId::desk_load_good) == ui::Actions{AskDesk{ui::LoadFile{true}}});
    CHECK(screen.tap(file, TextId::desk_audit_file) == ui::Actions{AskDesk{ui::AuditFile{}}});
    CHECK(screen.tap(sample(ScreenId::DeskWork), TextId::desk_cancel) == ui::Actions{AskDesk{ui::CancelWork{}}});
    CHECK(screen.tap(sample(ScreenId::DeskDoubt), TextId::desk_approve) == ui::Actions{AskDesk{ui::ApproveDoubt{}}});
}

TEST_CASE("desk: a fingerprint stands in six groups, and its two answers are equally large; neither is chosen")
{
    test::Headless screen;
    const auto state = sample(ScreenId::DeskKey);
    screen.frame(state);
    std::string groups;
    const ui::Note* same = nullptr;
    const ui::Note* other = nullptr;
    for (const auto& note : screen.notes()) {
        if (note.role == ui::Role::Figure)
            groups += note.words + " ";
        if (note.id == TextId::desk_key_same)
            same = &note;
        if (note.id == TextId::desk_key_other)
            other = &note;
    }
    CHECK(groups == "5975 0902 2472 6019 7461 4539 ");
    REQUIRE(same != nullptr);
    REQUIRE(other != nullptr);
    CHECK(same->letter_px == other->letter_px);
    CHECK(same->high.y - same->low.y == other->high.y - other->low.y);
    CHECK(screen.frame(state).empty()); // nothing by itself
    CHECK(screen.tap(state, TextId::desk_key_same) == ui::Actions{AskDesk{ui::AnswerKey{true}}});
    CHECK(screen.tap(state, TextId::desk_key_other) == ui::Actions{AskDesk{ui::AnswerKey{false}}});
}

TEST_CASE("desk: the test picture, its middle and what can be done with it are on one page")
{
    const auto state = sample(ScreenId::DeskCamera);
    REQUIRE(state.camera);
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}, ImVec2{800, 1280}}) {
        test::Headless screen(size);
        screen.frame(state);
        CAPTURE(size.x);
        CAPTURE(screen.words());
        CHECK(screen.says(state.camera->hint));
        CHECK(screen.says(test::language("en").text(TextId::camera_middle)));
        CHECK(screen.tap(state, "Keep this picture") == ui::Actions{AskDesk{ui::KeepPicture{0}}});
    }
}

TEST_CASE("desk: large letters leave the test picture large enough to look at")
{
    const auto state = sample(ScreenId::DeskCamera);
    for (const int percent : {200, 300})
        for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}, ImVec2{800, 1280}}) {
            CAPTURE(percent);
            CAPTURE(size.x);
            test::Headless screen(size, percent);
            bool seen = false;
            for (int page = 0; page < 4; ++page) {
                auto turned = state;
                turned.page = page;
                screen.frame(turned);
                for (const auto& note : screen.notes())
                    if (note.role == ui::Role::Picture) {
                        seen = true;
                        CHECK(note.high.y - note.low.y >= 90);
                    }
            }
            CHECK(seen);
        }
}
