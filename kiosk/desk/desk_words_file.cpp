#include "kiosk/desk/bundle_words.h"
#include "kiosk/desk/desk_words.h"
#include "kiosk/desk/load_words.h"
#include "ui/words/numbers.h"

namespace kiosk {
namespace {

using ui::DeskPage;
using ui::Language;
using ui::TextId;
using Kind = ui::DeskLine::Kind;

std::string counted(TextId text, std::uint64_t count, const Language& language)
{
    return language.fill(text, {{"n", ui::grouped(std::to_string(count))}});
}

void add(const SheetPreview& sheet, const Language& language, DeskPage& page)
{
    if (!sheet.tab.empty())
        page.lead.push_back(language.fill(TextId::desk_sheet_tab, {{"tab", "“" + sheet.tab + "”"}}));
    page.lead.push_back(counted(TextId::desk_sheet_rows, sheet.good_rows, language));
    if (sheet.refused_rows > 0)
        page.lead.push_back(counted(TextId::desk_sheet_refused, sheet.refused_rows, language));
    if (sheet.good_rows == 0)
        page.lead.push_back(language.text(TextId::desk_sheet_none));
    else if (!sheet.faults.empty()) {
        page.lead.push_back(language.text(TextId::desk_sheet_faulty));
        page.buttons.push_back({TextId::desk_load_good, ui::LoadFile{true}});
    } else
        page.buttons.push_back({TextId::desk_load, ui::LoadFile{false}});
    if (sheet.good_rows > 0)
        page.buttons.push_back({TextId::desk_audit_file, ui::AuditFile{}});
    if (!sheet.faults.empty()) {
        page.lines.push_back({Kind::Heading, language.text(TextId::desk_sheet_faults)});
        for (const auto& words : fault_words(sheet.faults, language))
            page.lines.push_back({Kind::Count, words});
    }
    if (!sheet.first.empty())
        page.lines.push_back({Kind::Heading, language.text(TextId::desk_sheet_first)});
    for (const auto& product : sheet.first) {
        page.lines.push_back({Kind::Count, product.name});
        page.lines.push_back(
            {Kind::Sample, product.gtin.digits() + (product.brand.empty() ? "" : ", " + product.brand)});
    }
}

const char* years_of(ReleasePreview::Columns columns)
{
    switch (columns) {
    case ReleasePreview::Columns::Of2019:
        return "2019";
    case ReleasePreview::Columns::From2020:
        return "2020-2021";
    case ReleasePreview::Columns::From2022:
        return "2022-2025";
    case ReleasePreview::Columns::From2026:
        break;
    }
    return "2026";
}

/// A guess is told with two digits: "about 2,000,000".
std::uint64_t roughly(std::uint64_t count)
{
    std::uint64_t step = 1;
    while (count / step >= 100)
        step *= 10;
    return (count + step / 2) / step * step;
}

void add(const ReleasePreview& release, const Language& language, DeskPage& page)
{
    const TextId form = release.form == ReleasePreview::Form::Folder ? TextId::desk_release_folder
                        : release.form == ReleasePreview::Form::Zip  ? TextId::desk_release_zip
                                                                     : TextId::desk_release_json;
    page.lead.push_back(language.text(form));
    if (!release.day.empty())
        page.lead.push_back(language.fill(TextId::desk_release_day, {{"day", release.day}}));
    if (release.columns)
        page.lead.push_back(language.fill(TextId::desk_release_columns, {{"years", years_of(*release.columns)}}));
    page.lead.push_back(language.fill(TextId::desk_release_bytes, {{"size", size_words(release.bytes)}}));
    if (release.records && release.counted)
        page.lead.push_back(counted(TextId::desk_release_records, *release.records, language));
    else if (release.records)
        page.lead.push_back(counted(TextId::desk_release_about, roughly(*release.records), language));
    page.buttons.push_back({TextId::desk_load, ui::LoadFile{false}});
}

void add(const BundlePreview& bundle, const Language& language, DeskPage& page)
{
    page.lead.push_back(bundle_named(bundle.manifest, language) + ".");
    page.lead.push_back(counted(TextId::desk_bundle_labels, bundle.manifest.products, language));
    page.lead.push_back(language.fill(TextId::desk_bundle_key, {{"fingerprint", bundle.fingerprint}}));
    if (bundle.key == BundlePreview::Key::Foreign) {
        page.lead.push_back(language.fill(TextId::desk_key_foreign, {{"expected", bundle.accepted}}));
        return;
    }
    page.lead.push_back(
        language.text(bundle.key == BundlePreview::Key::First ? TextId::desk_key_first : TextId::desk_key_accepted));
    if (bundle.age == BundlePreview::Age::Older) {
        page.lead.push_back(language.fill(TextId::desk_age_older, {{"found", std::to_string(bundle.manifest.counter)},
                                                                   {"expected", std::to_string(bundle.newest)}}));
        return;
    }
    page.lead.push_back(language.text(bundle.age == BundlePreview::Age::InPlace  ? TextId::desk_age_in_place
                                      : bundle.age == BundlePreview::Age::Before ? TextId::desk_age_before
                                                                                 : TextId::desk_age_newer));
    page.buttons.push_back({TextId::desk_install, ui::InstallFile{}});
    page.lines.push_back({Kind::Sentence, language.text(TextId::desk_bundle_parts)});
}

} // namespace

DeskPage file_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    if (!state.file)
        return page;
    page.title = state.file->path.filename().string();
    page.lead.push_back(file_line(*state.file, language));
    if (!state.preview) { // installed meanwhile, or taken back
        page.buttons.push_back({TextId::desk_look_again, ui::OpenFile{state.file_index}});
        return page;
    }
    if (const auto* sheet = std::get_if<SheetPreview>(&*state.preview))
        add(*sheet, language, page);
    else if (const auto* release = std::get_if<ReleasePreview>(&*state.preview))
        add(*release, language, page);
    else
        add(std::get<BundlePreview>(*state.preview), language, page);
    return page;
}

} // namespace kiosk
