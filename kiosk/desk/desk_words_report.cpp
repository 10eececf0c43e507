#include "kiosk/desk/bundle_words.h"
#include "kiosk/desk/desk_words.h"
#include "kiosk/desk/load_words.h"
#include "kiosk/desk/release_words.h"
#include "ui/words/error_words.h"

namespace kiosk {
namespace {

using ui::DeskPage;
using ui::Language;
using ui::TextId;
using Kind = ui::DeskLine::Kind;

/// What is said of each kind of news.
struct Tell {
    const DeskState& state;
    const Language& language;
    DeskPage& page;

    void lead(const std::string& words) const { page.lead.push_back(words); }

    /// Where a bundle is shown in place of the catalog that was loaded, nobody should wait for its labels.
    void lead_of_bundle_in_front() const
    {
        if (state.in_front)
            lead(language.fill(TextId::desk_behind_bundle, {{"bundle", "“" + state.in_front->name + "”"},
                                                            {"back", language.text(TextId::desk_undo_install)}}));
    }
    void operator()(const SheetTaken& taken) const
    {
        lead(loaded_words(taken.report, taken.keep_good_rows, state.catalog, taken.there, language));
        for (const auto& tab : tab_words(taken.report, language))
            lead(tab);
        if (taken.report.taken > 0)
            lead_of_bundle_in_front();
        for (const auto& words : replaced_words(taken.report, language))
            page.lines.push_back({Kind::Count, words});
        for (const auto& fault : fault_words(taken.report.faults, language))
            page.lines.push_back({Kind::Count, fault});
    }
    /// The first sentences stand on top, what follows below what can be done next.
    void operator()(const catalog::ReleaseLoaded& loaded) const
    {
        bool on_top = true;
        for (auto& line : release_words(loaded, state.catalog, language)) {
            on_top = on_top && line.kind == Kind::Sentence;
            if (on_top)
                lead(line.words);
            else
                page.lines.push_back(std::move(line));
        }
        if (!loaded.cancelled && loaded.report.taken > 0)
            lead_of_bundle_in_front();
    }
    void operator()(const catalog::Installing& done) const
    {
        for (const auto& words : install_words(done, language))
            lead(words);
        if (state.catalog_named)
            lead(language.text(TextId::desk_named_catalog));
    }
    void operator()(const std::optional<catalog::Manifest>& now) const { lead(went_back_words(now, language)); }
    void operator()(const LoadUndone& undone) const
    {
        if (state.load_undone && undone.labels == 0)
            lead(language.fill(TextId::desk_undone_empty, {{"redo", language.text(TextId::desk_redo_load)}}));
        else
            lead(language.text(state.load_undone ? TextId::desk_undone : TextId::desk_redone));
        lead_of_bundle_in_front();
    }
    void operator()(const KeyRefused&) const { lead(language.text(TextId::desk_key_refused)); }
    void operator()(const Ended&) const { lead(language.text(TextId::desk_ended)); }
    void operator()(const PictureKept& kept) const
    {
        if (kept.path.empty())
            lead(language.text(TextId::desk_picture_none));
        else
            lead(language.fill(TextId::desk_picture_kept, {{"path", kept.path.string()}}));
    }
    void operator()(const Refused& refused) const
    {
        const bool nothing_kept =
            state.report_of == DeskWork::UndoingLoad && refused.error.kind == core::Error::Kind::NothingBefore;
        if (refused.stick_gone)
            lead(language.text(TextId::desk_stick_gone));
        else if (nothing_kept)
            lead(language.text(TextId::desk_nothing_to_undo));
        else if (refused.error.kind == core::Error::Kind::OlderBundle) // a command has other ways out
            lead(language.fill(TextId::desk_age_older,
                               {{"found", refused.error.place.found}, {"expected", refused.error.place.expected}}));
        else
            lead(ui::sentence(refused.error, language));
    }
    void operator()(const DoubtAnswered& answered) const
    {
        lead(approved_words(answered.approved, state.catalog, answered.gtin.digits(),
                            std::string(core::info(answered.rule).name), language));
    }
    // These have pages of their own.
    void operator()(const StickFiles&) const {}
    void operator()(const Preview&) const {}
    void operator()(const AuditFound&) const {}
};

bool is_of_load(DeskWork work)
{
    return work == DeskWork::Loading || work == DeskWork::UndoingLoad;
}

} // namespace

DeskPage report_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    page.title = language.text(TextId::desk_report);
    if (!state.report)
        return page;
    std::visit(Tell{state, language, page}, *state.report);
    const bool changed = changed_something(*state.report);
    if (changed && is_of_load(state.report_of) && state.can_undo_load)
        page.buttons.push_back({state.load_undone ? TextId::desk_redo_load : TextId::desk_undo_load, ui::UndoLoad{}});
    if (changed && !is_of_load(state.report_of) && state.can_undo_install)
        page.buttons.push_back({TextId::desk_undo_install, ui::UndoInstall{}});
    if (state.report_of == DeskWork::KeepingPicture)
        page.buttons.push_back({TextId::desk_camera, ui::OpenCamera{}});
    else
        page.buttons.push_back({TextId::desk_files, ui::LookForFiles{}});
    page.buttons.push_back({TextId::desk_home, ui::OpenDesk{}});
    return page;
}

} // namespace kiosk
