#include "kiosk/desk/preview.h"

#include "catalog/bundle/bundle_file.h"
#include "catalog/bundle/installed.h"
#include "catalog/read/release_files.h"
#include "catalog/read/release_json.h"
#include "catalog/read/release_table.h"

#include <algorithm>
#include <array>
#include <regex>
#include <system_error>

namespace kiosk {
namespace {

namespace fs = std::filesystem;

Preview of_sheet(const StickFile& file)
{
    auto sheet = catalog::read_sheet_file(file.path.string());
    SheetPreview preview{sheet.products.size(), sheet.refused_rows, {}, std::move(sheet.faults), std::move(sheet.tab)};
    if (sheet.products.size() > SheetPreview::most_shown)
        sheet.products.erase(sheet.products.begin() + SheetPreview::most_shown, sheet.products.end());
    preview.first = std::move(sheet.products);
    return preview;
}

/// The day in the name of a download, of its folder or of a folder above it.
std::string day_in_name(const fs::path& path)
{
    static const std::regex day("20[0-9]{2}-[01][0-9]-[0-3][0-9]");
    const std::string words = path.string();
    std::string last;
    for (std::sregex_iterator at(words.begin(), words.end(), day), end; at != end; ++at)
        last = at->str();
    return last;
}

ReleasePreview::Columns columns_in(const std::vector<std::string>& header)
{
    const auto has = [&](const char* name) { return std::ranges::find(header, name) != header.end(); };
    if (has("material_code"))
        return ReleasePreview::Columns::From2026;
    if (has("trade_channel"))
        return ReleasePreview::Columns::From2022;
    return has("market_country") ? ReleasePreview::Columns::From2020 : ReleasePreview::Columns::Of2019;
}

/// The columns, and how many records there are by the length of the first ones.
core::Result<void> look_at_records(const catalog::ReleaseFile& branded, ReleasePreview& preview)
{
    auto bytes = branded.open();
    if (!bytes)
        return tl::make_unexpected(bytes.error());
    const auto header = catalog::PublishedCsv(**bytes, branded.name).header();
    if (!header)
        return tl::make_unexpected(header.error());
    preview.columns = columns_in(*header);
    bytes = branded.open();
    if (!bytes)
        return tl::make_unexpected(bytes.error());
    auto table = catalog::ReleaseTable::open(**bytes, branded.name, catalog::branded_columns());
    if (!table)
        return tl::make_unexpected(table.error());
    constexpr std::size_t enough = 5'000; // some megabytes: read in a moment
    std::uint64_t rows = 0;
    std::uint64_t read = 0;
    const auto whole = table->each(
        enough,
        [&](std::uint64_t so_far) {
            read = so_far;
            return false;
        },
        [&](std::size_t) -> core::Result<void> {
            ++rows;
            return {};
        });
    if (!whole)
        return tl::make_unexpected(whole.error());
    preview.counted = *whole;
    preview.records = *whole || read == 0 ? rows : branded.size * rows / read;
    return {};
}

/// Refuses a JSON file that begins with no foods. The reading ends behind the first thousand of them, and where eight
/// megabytes hold none.
core::Result<void> look_for_foods(const catalog::ReleaseFile& json)
{
    const auto bytes = json.open();
    if (!bytes)
        return tl::make_unexpected(bytes.error());
    const auto read = catalog::read_release_json(
        **bytes, json.name, [](const catalog::JsonFood&) {}, [](std::uint64_t) { return false; });
    if (!read)
        return tl::make_unexpected(read.error());
    return {};
}

core::Result<Preview> of_release(const StickFile& file)
{
    const auto files = catalog::find_release(file.path);
    if (!files)
        return tl::make_unexpected(files.error());
    ReleasePreview preview;
    preview.day = day_in_name(file.path);
    std::error_code unknown;
    preview.form = fs::is_directory(file.path, unknown) ? ReleasePreview::Form::Folder : ReleasePreview::Form::Zip;
    if (files->json) {
        preview.form = ReleasePreview::Form::Json;
        preview.bytes = files->json->size;
        if (const auto looked = look_for_foods(*files->json); !looked)
            return tl::make_unexpected(looked.error());
        return preview;
    }
    preview.bytes = files->size();
    for (const auto* other : {&files->food, &files->amounts}) { // a missing column is told before a long load
        const auto bytes = other->open();
        if (!bytes)
            return tl::make_unexpected(bytes.error());
        const auto columns = other == &files->food ? catalog::food_columns() : catalog::amount_columns();
        if (const auto table = catalog::ReleaseTable::open(**bytes, other->name, columns); !table)
            return tl::make_unexpected(table.error());
    }
    if (const auto looked = look_at_records(files->branded, preview); !looked)
        return tl::make_unexpected(looked.error());
    return preview;
}

BundlePreview::Age age_of(const catalog::Manifest& manifest, const catalog::Digest& digest,
                          const catalog::Installed& has)
{
    if (has.now && has.now->manifest == digest)
        return BundlePreview::Age::InPlace;
    if (has.before && has.before->manifest == digest)
        return BundlePreview::Age::Before;
    return manifest.counter > has.newest ? BundlePreview::Age::Newer : BundlePreview::Age::Older;
}

core::Result<Preview> of_bundle(const StickFile& file, const fs::path& data)
{
    const std::string name = file.path.string();
    const auto source = catalog::open_file(file.path);
    if (!source)
        return tl::make_unexpected(source.error());
    const auto sealed = catalog::read_seal(**source, name);
    if (!sealed)
        return tl::make_unexpected(sealed.error());
    auto manifest = catalog::read_manifest(sealed->text);
    if (!manifest)
        return core::refuse(manifest.error().kind, manifest.error().detail, core::Place{name, 0, {}, {}, {}});
    if (const auto length = catalog::check_length(**source, *manifest, sealed->text.size(), name); !length)
        return tl::make_unexpected(length.error());
    const auto has = catalog::read_installed(data);
    if (!has)
        return tl::make_unexpected(has.error());
    BundlePreview preview;
    preview.age = age_of(*manifest, catalog::digest_of(catalog::bytes_in(sealed->text)), *has);
    preview.manifest = *std::move(manifest);
    preview.fingerprint = catalog::fingerprint(sealed->key);
    preview.newest = has->newest;
    if (has->key) {
        preview.accepted = catalog::fingerprint(*has->key);
        preview.key = *has->key == sealed->key ? BundlePreview::Key::Accepted : BundlePreview::Key::Foreign;
    }
    return preview;
}

} // namespace

core::Result<Preview> look_into(const StickFile& file, const fs::path& data)
{
    switch (file.kind) {
    case StickFile::Kind::Release:
        return of_release(file);
    case StickFile::Kind::Bundle:
        return of_bundle(file, data);
    case StickFile::Kind::Sheet:
        break;
    }
    return of_sheet(file);
}

} // namespace kiosk
