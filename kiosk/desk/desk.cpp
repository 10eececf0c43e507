#include "kiosk/desk/desk.h"

#include "catalog/bundle/installed.h"
#include "catalog/load/undo.h"
#include "kiosk/desk/desk_work.h"

#include <algorithm>
#include <utility>

namespace kiosk {

using ui::ScreenId;

std::vector<core::DoubtRule> rules_of(const AuditFound& audit)
{
    std::vector<core::DoubtRule> rules;
    for (const auto& rule : core::doubt_rules())
        if (audit.tally.of(rule.rule).count > 0)
            rules.push_back(rule.rule);
    return rules;
}

bool changed_something(const DeskNews& report)
{
    if (const auto* sheet = std::get_if<SheetTaken>(&report))
        return sheet->report.taken > 0;
    if (const auto* release = std::get_if<catalog::ReleaseLoaded>(&report))
        return !release->cancelled && release->report.taken > 0;
    return std::holds_alternative<LoadUndone>(report) || std::holds_alternative<catalog::Installing>(report) ||
           std::holds_alternative<std::optional<catalog::Manifest>>(report);
}

std::vector<catalog::DoubtSample> samples_of(const DeskState& state, core::DoubtRule rule)
{
    std::vector<catalog::DoubtSample> samples;
    if (state.audit)
        for (const auto& sample : state.audit->tally.of(rule).samples)
            if (std::ranges::count(state.approved, std::pair(sample.gtin, rule)) == 0)
                samples.push_back(sample);
    return samples;
}

Desk::Desk(DeskPlaces places, std::function<void()> wake) : places_(std::move(places)), worker_(std::move(wake))
{
    state_.catalog = places_.catalog.string();
    state_.catalog_named = places_.catalog_named;
    state_.camera = places_.take_picture != nullptr;
    state_.load_undone = catalog::is_load_undone(places_.catalog);
    look_around();
}

std::optional<ScreenId> Desk::ask(const ui::DeskAction& asked)
{
    return std::visit([this](const auto& what) { return perform(what); }, asked);
}

Desk::News Desk::follow()
{
    News news;
    if (!worker_.busy())
        return news;
    if (auto result = worker_.take()) {
        state_.busy = false;
        look_around();
        news.page = arrived(std::move(*result));
        return news;
    }
    const auto now = worker_.progress();
    const auto since = std::chrono::duration_cast<Milliseconds>(Clock::now() - started_);
    news.progress = now.done != state_.progress.done || now.stage != state_.progress.stage;
    state_.progress = now;
    state_.since_start = since;
    return news;
}

void Desk::look_around()
{
    std::error_code unknown;
    state_.can_audit = std::filesystem::exists(places_.catalog, unknown);
    state_.can_undo_load = catalog::can_undo(places_.catalog);
    const auto installed = catalog::read_installed(places_.data);
    state_.can_undo_install = installed && installed->can_go_back;
    state_.in_front.reset();
    if (installed && installed->now && !places_.catalog_named)
        state_.in_front = catalog::manifest_of(places_.data, *installed->now);
}

/// Begins work, when none is being done; either way that is what is shown.
Desk::Page Desk::begin(DeskWork what, std::function<DeskNews(WorkLine&)> work)
{
    if (worker_.start(std::move(work))) {
        state_.busy = true;
        state_.work = what;
        state_.progress = {};
        state_.since_start = Milliseconds{0};
        started_ = Clock::now();
    }
    return ScreenId::DeskWork;
}

Desk::Page Desk::perform(const ui::OpenDesk&)
{
    look_around();
    return busy() ? ScreenId::DeskWork : ScreenId::Desk;
}

Desk::Page Desk::perform(const ui::LookForFiles&)
{
    return begin(DeskWork::Looking, [folders = places_.folders, sticks = places_.look_at_sticks](WorkLine& line) {
        return find_files(folders, sticks, line);
    });
}

Desk::Page Desk::perform(const ui::OpenFile& asked)
{
    if (!state_.found || asked.index >= state_.found->files.size() || busy())
        return std::nullopt;
    state_.file = state_.found->files[asked.index];
    state_.file_index = asked.index;
    state_.preview.reset();
    return begin(DeskWork::Previewing,
                 [file = *state_.file, data = places_.data](WorkLine&) { return preview_file(file, data); });
}

Desk::Page Desk::perform(const ui::LoadFile& asked)
{
    if (!state_.file || !state_.preview || state_.file->kind == StickFile::Kind::Bundle)
        return std::nullopt;
    return begin(DeskWork::Loading, [file = *state_.file, into = places_.catalog, keep = asked.keep_good_rows](
                                        WorkLine& line) { return load_file(file, into, keep, line); });
}

Desk::Page Desk::perform(const ui::UndoLoad&)
{
    return begin(DeskWork::UndoingLoad, [catalog = places_.catalog](WorkLine&) { return take_load_back(catalog); });
}

Desk::Page Desk::begin_install(const std::string& accept)
{
    return begin(DeskWork::Installing, [file = *state_.file, data = places_.data, accept](WorkLine& line) {
        return install_file(file, data, accept, line);
    });
}

Desk::Page Desk::perform(const ui::InstallFile&)
{
    const auto* bundle = state_.preview ? std::get_if<BundlePreview>(&*state_.preview) : nullptr;
    if (!bundle || !state_.file)
        return std::nullopt;
    if (bundle->key == BundlePreview::Key::First)
        return busy() ? ScreenId::DeskWork : ScreenId::DeskKey;
    return begin_install("");
}

Desk::Page Desk::perform(const ui::AnswerKey& asked)
{
    const auto* bundle = state_.preview ? std::get_if<BundlePreview>(&*state_.preview) : nullptr;
    if (!bundle || !state_.file || busy())
        return std::nullopt;
    if (asked.same) // the fingerprint that was on the screen, not whatever key the file has by now
        return begin_install(bundle->fingerprint);
    state_.report = KeyRefused{};
    state_.report_of = DeskWork::Installing;
    state_.came = ScreenId::DeskReport;
    return state_.came;
}

Desk::Page Desk::perform(const ui::UndoInstall&)
{
    return begin(DeskWork::UndoingInstall, [data = places_.data](WorkLine&) { return take_install_back(data); });
}

Desk::Page Desk::begin_audit(const std::string& path, bool of_catalog)
{
    return begin(DeskWork::Auditing, [path, of_catalog, file = state_.file](WorkLine& line) {
        return audit_file(path, of_catalog, of_catalog ? std::nullopt : file, line);
    });
}

Desk::Page Desk::perform(const ui::AuditFile&)
{
    if (!state_.file || state_.file->kind != StickFile::Kind::Sheet)
        return std::nullopt;
    return begin_audit(state_.file->path.string(), false);
}

Desk::Page Desk::perform(const ui::AuditCatalog&)
{
    return begin_audit(places_.catalog.string(), true);
}

Desk::Page Desk::perform(const ui::OpenRule& asked)
{
    if (!state_.audit)
        return std::nullopt;
    const auto rules = rules_of(*state_.audit);
    if (asked.index >= rules.size())
        return std::nullopt;
    state_.rule = rules[asked.index];
    return ScreenId::DeskRule;
}

Desk::Page Desk::perform(const ui::OpenDoubt& asked)
{
    if (!state_.rule)
        return std::nullopt;
    const auto samples = samples_of(state_, *state_.rule);
    if (asked.index >= samples.size())
        return std::nullopt;
    state_.doubt = samples[asked.index].gtin;
    return ScreenId::DeskDoubt;
}

Desk::Page Desk::perform(const ui::ApproveDoubt&)
{
    if (!state_.audit || !state_.audit->of_catalog || !state_.rule || !state_.doubt)
        return std::nullopt;
    const std::string day = places_.today ? places_.today() : "";
    return begin(DeskWork::Approving, [catalog = places_.catalog.string(), gtin = *state_.doubt, rule = *state_.rule,
                                       day](WorkLine&) { return approve_doubt(catalog, gtin, rule, day); });
}

Desk::Page Desk::perform(const ui::OpenCamera&)
{
    state_.read.clear();
    if (places_.look_afresh)
        places_.look_afresh();
    state_.picture_folders = places_.folders;
    if (places_.look_at_sticks)
        for (auto& stick : mounted_sticks())
            state_.picture_folders.push_back(std::move(stick));
    return ScreenId::DeskCamera;
}

Desk::Page Desk::perform(const ui::KeepPicture& asked)
{
    if (!places_.take_picture || asked.index >= state_.picture_folders.size())
        return std::nullopt;
    return begin(DeskWork::KeepingPicture, [take = places_.take_picture, folder = state_.picture_folders[asked.index]](
                                               WorkLine&) { return keep_camera_picture(take, folder); });
}

Desk::Page Desk::perform(const ui::CancelWork&)
{
    worker_.end();
    return std::nullopt;
}

Desk::Page Desk::perform(const ui::OpenReport&)
{
    return state_.came;
}

/// Puts what work brought where it belongs; returns the page that shows it.
ScreenId Desk::arrived(DeskNews news)
{
    if (auto* files = std::get_if<StickFiles>(&news)) {
        state_.found = std::move(*files);
        return ScreenId::DeskFiles;
    }
    if (auto* preview = std::get_if<Preview>(&news)) {
        state_.preview = std::move(*preview);
        return ScreenId::DeskFile;
    }
    if (auto* audit = std::get_if<AuditFound>(&news)) {
        state_.audit = std::move(*audit);
        state_.approved.clear();
        state_.came = ScreenId::DeskAudit;
        return ScreenId::DeskAudit;
    }
    if (const auto* answered = std::get_if<DoubtAnswered>(&news);
        answered && answered->approved.what == Approved::What::Done) {
        state_.approved.emplace_back(answered->gtin, answered->rule);
        return ScreenId::DeskRule;
    }
    if (std::holds_alternative<LoadUndone>(news))
        state_.load_undone = !state_.load_undone;
    else if (state_.work == DeskWork::Loading && changed_something(news))
        state_.load_undone = false;
    if (state_.work == DeskWork::Installing || state_.work == DeskWork::UndoingInstall)
        state_.preview.reset(); // what it said of keys and numbers holds no more
    state_.report = std::move(news);
    state_.report_of = state_.work;
    state_.came = ScreenId::DeskReport;
    return ScreenId::DeskReport;
}

} // namespace kiosk
