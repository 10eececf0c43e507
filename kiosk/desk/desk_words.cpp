#include "kiosk/desk/desk_words.h"

#include "kiosk/desk/bundle_words.h"
#include "kiosk/desk/release_words.h"
#include "ui/words/numbers.h"

#include <algorithm>
#include <iterator>
#include <sstream>

namespace kiosk {
namespace {

using ui::DeskPage;
using ui::Language;
using ui::ScreenId;
using ui::TextId;

DeskPage home_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    page.title = language.text(TextId::desk_title);
    page.lead.push_back(language.fill(TextId::desk_shown, {{"n", ui::grouped(std::to_string(state.shown))}}));
    if (state.in_front)
        page.lead.push_back(
            language.fill(TextId::desk_shown_bundle, {{"bundle", bundle_named(*state.in_front, language)}}));
    page.lead.push_back(language.fill(TextId::desk_into, {{"catalog", state.catalog}}));
    const auto offer = [&](TextId name, TextId note, ui::DeskAction asked) {
        page.choices.push_back({language.text(name), language.text(note), asked});
    };
    offer(TextId::desk_files, TextId::desk_files_note, ui::LookForFiles{});
    if (state.can_audit)
        offer(TextId::desk_audit, TextId::desk_audit_note, ui::AuditCatalog{});
    if (state.camera)
        offer(TextId::desk_camera, TextId::desk_camera_note, ui::OpenCamera{});
    if (state.can_undo_load)
        offer(state.load_undone ? TextId::desk_redo_load : TextId::desk_undo_load,
              state.load_undone ? TextId::desk_redo_note : TextId::desk_undo_note, ui::UndoLoad{});
    if (state.can_undo_install)
        offer(TextId::desk_undo_install, TextId::desk_back_note, ui::UndoInstall{});
    if (state.came)
        offer(TextId::desk_report, TextId::desk_report_note, ui::OpenReport{});
    return page;
}

/// "/media/stick/a, /media/stick/b", the first ones.
std::string joined(const std::vector<std::filesystem::path>& folders)
{
    constexpr std::size_t most = 3;
    std::string words;
    for (std::size_t i = 0; i < std::min(most, folders.size()); ++i)
        words += (i == 0 ? "" : ", ") + folders[i].string();
    return folders.size() > most ? words + ", ..." : words;
}

DeskPage files_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    page.title = language.text(TextId::desk_files);
    page.buttons.push_back({TextId::desk_look_again, ui::LookForFiles{}});
    if (!state.found)
        return page;
    if (state.found->sticks == 0)
        page.lead.push_back(language.text(TextId::desk_no_stick));
    else if (state.found->files.empty() && state.found->locked.empty())
        page.lead.push_back(language.text(TextId::desk_no_file));
    if (!state.found->locked.empty())
        page.lead.push_back(language.fill(TextId::desk_locked, {{"folders", joined(state.found->locked)}}));
    if (!state.found->all)
        page.lead.push_back(language.text(TextId::desk_not_all));
    for (std::size_t i = 0; i < state.found->files.size(); ++i) {
        const auto& file = state.found->files[i];
        page.choices.push_back({file.path.filename().string(), file_line(file, language), ui::OpenFile{i}});
    }
    return page;
}

TextId work_text(DeskWork work)
{
    switch (work) {
    case DeskWork::Looking:
        return TextId::desk_work_looking;
    case DeskWork::Previewing:
        return TextId::desk_work_preview;
    case DeskWork::Loading:
        return TextId::desk_work_load;
    case DeskWork::Auditing:
        return TextId::desk_work_audit;
    case DeskWork::Approving:
        return TextId::desk_work_approve;
    case DeskWork::Installing:
        return TextId::desk_work_install;
    case DeskWork::KeepingPicture:
        return TextId::desk_work_picture;
    case DeskWork::UndoingLoad:
    case DeskWork::UndoingInstall:
        break;
    }
    return TextId::desk_work_undo;
}

/// Whether the work can be ended before it is done; what takes a moment only is not.
bool can_end(DeskWork work)
{
    return work == DeskWork::Looking || work == DeskWork::Loading || work == DeskWork::Auditing ||
           work == DeskWork::Installing;
}

std::string far_words(const DeskState& state, const Language& language)
{
    const auto& far = state.progress;
    if (far.stage)
        return progress_words({*far.stage, far.done, far.whole}, state.since_start, language);
    const TextId stage = state.work == DeskWork::Installing ? TextId::desk_work_reading : work_text(state.work);
    return progress_words(language.text(stage), far.done, far.whole, state.since_start, language);
}

DeskPage work_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    page.title = language.text(work_text(state.work));
    const bool of_file = state.work == DeskWork::Loading || state.work == DeskWork::Installing;
    if (of_file && state.file)
        page.lead.push_back(state.file->path.filename().string());
    if (state.progress.whole > 0) {
        page.lead.push_back(far_words(state, language));
        page.percent =
            static_cast<int>(std::min(state.progress.done, state.progress.whole) * 100 / state.progress.whole);
    }
    if (can_end(state.work))
        page.buttons.push_back({TextId::desk_cancel, ui::CancelWork{}});
    page.lines.push_back({ui::DeskLine::Kind::Sentence, language.text(TextId::desk_work_serves)});
    return page;
}

DeskPage key_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    page.title = language.text(TextId::desk_key_title);
    const auto* bundle = state.preview ? std::get_if<BundlePreview>(&*state.preview) : nullptr;
    if (!bundle)
        return page;
    page.lead.push_back(language.fill(TextId::desk_key_lead, {{"maker", bundle->manifest.maker}}));
    std::istringstream groups(bundle->fingerprint);
    for (std::string group; groups >> group;)
        page.fingerprint.push_back(group);
    page.buttons.push_back({TextId::desk_key_same, ui::AnswerKey{true}});
    page.buttons.push_back({TextId::desk_key_other, ui::AnswerKey{false}});
    page.lines.push_back({ui::DeskLine::Kind::Sentence, language.text(TextId::desk_key_then)});
    return page;
}

DeskPage camera_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    page.title = language.text(TextId::desk_camera);
    page.camera = true;
    if (!state.camera)
        page.lead.push_back(language.text(TextId::camera_none));
    else if (state.read.empty())
        page.lead.push_back(language.text(TextId::desk_camera_lead));
    else
        page.lead.push_back(language.fill(TextId::desk_camera_read, {{"code", state.read}}));
    page.one_column = state.picture_folders.size() == 1; // lower than in a narrow column: room for the picture
    for (std::size_t i = 0; state.camera && i < state.picture_folders.size(); ++i)
        page.choices.push_back({language.text(TextId::desk_keep_picture),
                                language.fill(TextId::desk_keep_into, {{"folder", state.picture_folders[i].string()}}),
                                ui::KeepPicture{i}});
    page.buttons.push_back({TextId::desk_home, ui::OpenDesk{}});
    return page;
}

/// Which words stand on which screen.
struct Page {
    ScreenId screen;
    DeskPage (*words)(const DeskState&, const Language&);
};
constexpr Page pages[] = {{ScreenId::Desk, home_page},         {ScreenId::DeskFiles, files_page},
                          {ScreenId::DeskFile, file_page},     {ScreenId::DeskWork, work_page},
                          {ScreenId::DeskReport, report_page}, {ScreenId::DeskKey, key_page},
                          {ScreenId::DeskAudit, audit_page},   {ScreenId::DeskRule, rule_page},
                          {ScreenId::DeskDoubt, doubt_page},   {ScreenId::DeskCamera, camera_page}};

} // namespace

DeskPage desk_page(const DeskState& state, ScreenId screen, const Language& language)
{
    const auto* const page = std::ranges::find(pages, screen, &Page::screen);
    return page == std::end(pages) ? DeskPage{} : page->words(state, language);
}

bool is_desk(ScreenId screen)
{
    return std::ranges::count(pages, screen, &Page::screen) > 0;
}

std::string size_words(std::uint64_t bytes)
{
    constexpr std::uint64_t thousand = 1'000;
    constexpr std::uint64_t million = 1'000'000;
    const bool large = bytes >= million;
    const auto whole = (bytes + (large ? million : thousand) - 1) / (large ? million : thousand);
    return ui::grouped(std::to_string(whole)) + (large ? " MB" : " KB");
}

std::string file_line(const StickFile& file, const Language& language)
{
    const TextId kind = file.kind == StickFile::Kind::Sheet     ? TextId::desk_sheet
                        : file.kind == StickFile::Kind::Release ? TextId::desk_release
                                                                : TextId::desk_bundle;
    const auto inside = file.path.parent_path().lexically_relative(file.stick); // two may have one name
    auto where = (file.stick.filename() / inside).lexically_normal().string();
    if (where.ends_with('/')) // in no folder
        where.pop_back();
    return language.fill(
        TextId::desk_file_line,
        {{"kind", language.text(kind)}, {"size", size_words(file.bytes)}, {"day", file.day}, {"stick", where}});
}

} // namespace kiosk
