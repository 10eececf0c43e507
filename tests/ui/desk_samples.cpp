#include "tests/ui/desk_samples.h"

#include "catalog/load/audit_pass.h"
#include "kiosk/desk/desk_words.h"

#include <utility>

namespace test {
namespace {

using kiosk::DeskState;
using kiosk::DeskWork;
using ui::ScreenId;

const std::string stick = "/media/leader/CEDAR HOLLOW MARKET";

kiosk::StickFile file(kiosk::StickFile::Kind kind, const std::string& name, std::uint64_t bytes)
{
    return {kind, stick + "/labels for the pantry/" + name, stick, bytes, "2026-11-26"};
}

catalog::Manifest manifest()
{
    catalog::Manifest manifest;
    manifest.name = "Labels of the markets and pantries of Cedar Hollow, winter, second edition";
    manifest.maker = "The nutrition educators of Cedar Hollow and of Saltwhistle";
    manifest.made = "2026-11-25";
    manifest.counter = 1207;
    manifest.products = 412'345;
    return manifest;
}

DeskState everything()
{
    using Kind = kiosk::StickFile::Kind;
    DeskState state;
    state.catalog = "/home/cedar-hollow-station/.local/share/pairstand/catalog.db";
    state.in_front = manifest();
    state.shown = 412'345;
    state.can_audit = true;
    state.camera = true;
    state.came = ui::ScreenId::DeskReport;
    state.can_undo_load = true;
    state.can_undo_install = true;
    state.found =
        kiosk::StickFiles{{file(Kind::Sheet, "own labels of the pantry, winter.xlsx", 48'211),
                           file(Kind::Release, "FoodData_Central_branded_food_csv_2026-04-30.zip", 427'000'000),
                           file(Kind::Bundle, "winter.bundle", 104'857'600)},
                          1,
                          false,
                          {"/media/pantry/STICK/private"}};
    for (int i = 0; i < 20; ++i)
        state.found->files.push_back(file(Kind::Sheet, "sheet_" + std::to_string(i) + ".csv", 900));
    state.file = state.found->files[1];
    state.report = kiosk::Ended{};
    return state;
}

core::Error fault(std::size_t row)
{
    return {core::Error::Kind::BadValue, "many",
            core::Place{stick + "/labels for the pantry/own labels.csv", row, "saturated_fat_g", "two and a half",
                        "a number of g, such as 3 or \"less than 1\""}};
}

kiosk::SheetPreview sheet()
{
    kiosk::SheetPreview preview;
    preview.good_rows = 1204;
    preview.refused_rows = 31;
    preview.tab = "Labels of winter";
    preview.first.assign(demo_products().begin(), demo_products().begin() + 8);
    for (std::size_t row = 2; row < 33; ++row)
        preview.faults.add(fault(row));
    return preview;
}

kiosk::ReleasePreview release()
{
    return {kiosk::ReleasePreview::Form::Zip,
            2'714'000'000,
            kiosk::ReleasePreview::Columns::From2022,
            1'987'654,
            false,
            "2026-04-30"};
}

kiosk::BundlePreview bundle(kiosk::BundlePreview::Key key, kiosk::BundlePreview::Age age)
{
    return {manifest(), "5975 0902 2472 6019 7461 4539", "1111 2222 3333 4444 5555 6666", key, age, 1300};
}

/// Labels that the audit doubts by several rules.
kiosk::AuditFound audit(std::size_t samples = 12)
{
    catalog::AuditPass pass(samples);
    std::vector<core::Product> all;
    for (const auto& good : demo_products()) {
        auto product = good;
        auto& lines = product.label.per_serving.lines;
        if (lines.contains(core::Nutrient::Sodium) && all.size() % 2 == 0)
            lines[core::Nutrient::Sodium].amount = core::parse_figure(core::Nutrient::Sodium, "7777").value();
        if (all.size() % 3 == 0)
            product.name = "Whole grain rolled oats with honey, almonds and dried cranberries, family size";
        product.origin.source = "own labels of the pantry, winter.xlsx";
        pass.look(product);
        all.push_back(std::move(product));
    }
    return {pass.finish([&](const core::Gtin& gtin) -> std::optional<core::Product> {
                for (const auto& product : all)
                    if (product.gtin == gtin)
                        return product;
                return std::nullopt;
            }),
            true, 3};
}

class States {
public:
    States(std::vector<NamedState>& states, const ui::Language& language) : states_(states), language_(language) {}
    void add(const std::string& name, ScreenId screen, const DeskState& desk)
    {
        auto state = state_of(screen, language_);
        state.desk_open = true;
        state.desk = kiosk::desk_page(desk, screen, language_);
        if (desk.camera)
            state.camera = camera_view(language_.text(ui::TextId::camera_hold_still));
        states_.push_back({"desk: " + name, std::move(state)});
    }
    void report(const std::string& name, kiosk::DeskNews news, DeskWork work)
    {
        auto desk = everything();
        desk.report = std::move(news);
        desk.report_of = work;
        add(name, ScreenId::DeskReport, desk);
    }

private:
    std::vector<NamedState>& states_;
    const ui::Language& language_;
};

void add_files(States& states)
{
    auto desk = everything();
    states.add("itself", ScreenId::Desk, desk);
    states.add("files", ScreenId::DeskFiles, desk);
    desk.preview = sheet();
    states.add("a sheet", ScreenId::DeskFile, desk);
    desk.preview = release();
    states.add("a release", ScreenId::DeskFile, desk);
    using Bundle = kiosk::BundlePreview;
    for (const auto key : {Bundle::Key::First, Bundle::Key::Accepted, Bundle::Key::Foreign})
        for (const auto age : {Bundle::Age::Newer, Bundle::Age::InPlace, Bundle::Age::Older}) {
            desk.preview = bundle(key, age);
            states.add("a bundle", ScreenId::DeskFile, desk);
        }
    states.add("a key", ScreenId::DeskKey, desk);
    desk.picture_folders = {stick, "/srv/cedar-hollow-station"};
    desk.read = "09521234543213";
    states.add("a test picture", ScreenId::DeskCamera, desk);
    desk.camera = false;
    states.add("no test picture", ScreenId::DeskCamera, desk);
    desk.found = kiosk::StickFiles{};
    states.add("no stick", ScreenId::DeskFiles, desk);
    desk.found->sticks = 1;
    states.add("nothing on it", ScreenId::DeskFiles, desk);
}

void add_work(States& states)
{
    auto desk = everything();
    for (const auto work :
         {DeskWork::Looking, DeskWork::Previewing, DeskWork::Loading, DeskWork::Auditing, DeskWork::Approving,
          DeskWork::Installing, DeskWork::UndoingLoad, DeskWork::KeepingPicture}) {
        desk.work = work;
        if (work == DeskWork::Loading)
            desk.progress = {catalog::LoadProgress::Stage::Products, 37, 100};
        else
            desk.progress = {std::nullopt, 37, 100};
        desk.since_start = kiosk::Milliseconds(97'000);
        states.add("work", ScreenId::DeskWork, desk);
    }
}

void add_audit(States& states)
{
    auto desk = everything();
    desk.audit = audit();
    states.add("an audit", ScreenId::DeskAudit, desk);
    for (const auto rule : kiosk::rules_of(*desk.audit)) {
        desk.rule = rule;
        states.add("a rule", ScreenId::DeskRule, desk);
        desk.doubt = kiosk::samples_of(desk, rule).front().gtin;
        states.add("a doubt", ScreenId::DeskDoubt, desk);
    }
    desk.audit->of_catalog = false;
    states.add("a doubt of a sheet", ScreenId::DeskDoubt, desk);
}

void add_reports(States& states)
{
    catalog::LoadReport report;
    report.taken = 1204;
    report.replaced = 17;
    report.refused_rows = 31;
    report.faults = sheet().faults;
    report.tabs = {{stick + "/own labels.xlsx", "Labels of winter", {"Labels of summer", "Old"}}};
    states.report("a picture was kept", kiosk::PictureKept{stick + "/pairstand-picture-1.png"},
                  DeskWork::KeepingPicture);
    states.report("no picture came", kiosk::PictureKept{}, DeskWork::KeepingPicture);
    states.report("a sheet was loaded", kiosk::SheetTaken{report, true, true}, DeskWork::Loading);
    report.taken = 0;
    states.report("nothing was loaded", kiosk::SheetTaken{report, false, true}, DeskWork::Loading);
    catalog::ReleaseLoaded loaded;
    loaded.report.records = 1'987'654;
    loaded.report.amounts = 27'123'456;
    loaded.report.taken = 412'345;
    loaded.report.replaced = 1234;
    loaded.report.kept = 31;
    for (std::size_t i = 0; i < catalog::finding_count; ++i)
        for (int times = 0; times < 2; ++times)
            loaded.report.note(static_cast<catalog::Finding>(i),
                               [] { return std::string("record 1234567, 00052800488262, Oat rounds, honey"); });
    loaded.report.audit = audit(2).tally;
    states.report("a release was loaded", loaded, DeskWork::Loading);
    states.report("a bundle is in place", catalog::Installing{manifest(), {}, 3}, DeskWork::Installing);
    states.report("the one before", std::optional(manifest()), DeskWork::UndoingInstall);
    states.report("undone", kiosk::LoadUndone{}, DeskWork::UndoingLoad);
    states.report("another key", kiosk::KeyRefused{}, DeskWork::Installing);
    states.report("stick gone", kiosk::Refused{fault(7), true}, DeskWork::Loading);
    states.report("refused", kiosk::Refused{fault(7), false}, DeskWork::Loading);
}

} // namespace

void add_desk_states(std::vector<NamedState>& states, const ui::Language& language)
{
    auto welcome = state_of(ScreenId::Welcome, language);
    welcome.desk_open = true;
    states.push_back({"welcome with the desk", welcome});
    States desk(states, language);
    add_files(desk);
    add_work(desk);
    add_audit(desk);
    add_reports(desk);
}

} // namespace test
