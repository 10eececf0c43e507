#include "catalog/load/work_folder.h"

#include "catalog/load/spill.h"

#include <nlohmann/json.hpp>

#include <chrono>
#include <cstring>
#include <fstream>
#include <stdexcept>

namespace catalog {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

constexpr int form = 3; // of what is set aside: another program's leavings are not read

std::string time_of(const fs::path& path)
{
    std::error_code error;
    const auto time = fs::last_write_time(path, error);
    return error ? "" : std::to_string(time.time_since_epoch().count());
}

Json json_of(const ReleaseReport& report)
{
    Json findings = Json::array();
    for (std::size_t i = 0; i < finding_count; ++i) {
        const auto& found = report.of(static_cast<Finding>(i));
        findings.push_back({{"count", found.count}, {"samples", found.samples}});
    }
    Json not_there = Json::array();
    for (const auto& name : report.not_there)
        not_there.push_back({{"category", name.what == NotThere::What::Category},
                             {"asked", name.asked},
                             {"there", name.there},
                             {"more", name.more}});
    return {{"records", report.records}, {"amounts", report.amounts}, {"findings", findings}, {"not_there", not_there}};
}

ReleaseReport report_of(const Json& json)
{
    ReleaseReport report;
    report.records = json.at("records").get<std::size_t>();
    report.amounts = json.at("amounts").get<std::size_t>();
    for (const auto& name : json.at("not_there"))
        report.not_there.push_back({name.at("category").get<bool>() ? NotThere::What::Category : NotThere::What::Market,
                                    name.at("asked").get<std::string>(),
                                    name.at("there").get<std::vector<std::string>>(),
                                    name.at("more").get<std::size_t>()});
    const auto& findings = json.at("findings");
    for (std::size_t i = 0; i < finding_count; ++i)
        report.restore(static_cast<Finding>(i), {findings.at(i).at("count").get<std::size_t>(),
                                                 findings.at(i).at("samples").get<std::vector<std::string>>()});
    return report;
}

/// What an earlier load noted; nothing where there is none, or none that this program understands.
Json state_in(const fs::path& folder)
{
    std::ifstream file(folder / "state");
    auto state = Json::parse(file, nullptr, false);
    if (!state.is_object() || state.value("form", 0) != form)
        return {};
    return state;
}

/// The files that are set aside, by name with their sizes; not the state itself.
Json sizes_in(const fs::path& folder)
{
    Json sizes = Json::object();
    for (const auto& entry : fs::directory_iterator(folder))
        if (!entry.path().filename().string().starts_with("state"))
            sizes[entry.path().filename().string()] = fs::file_size(entry.path());
    return sizes;
}

/// Whether all that was set aside still lies there: somebody may have cleared up.
bool is_whole(const Json& state, const fs::path& folder)
{
    const auto sizes = state.find("files");
    if (sizes == state.end() || !sizes->is_object())
        return false;
    for (const auto& [name, size] : sizes->items()) {
        std::error_code error;
        const auto found = fs::file_size(folder / name, error);
        if (error || size != found)
            return false;
    }
    return true;
}

} // namespace

std::string fingerprint_of(const ReleaseFiles& files, const fs::path& source, const ReleaseChoice& choice)
{
    // What is set aside is not synced: after a restart of the machine there may be holes in it.
    std::string boot;
    std::getline(std::ifstream("/proc/sys/kernel/random/boot_id"), boot);
    std::string text = boot + "|" + fs::absolute(source).string() + "|" + time_of(source);
    for (const auto* file : {&files.food, &files.branded, &files.amounts})
        text += "|" + file->name + "|" + std::to_string(file->size) + "|" + time_of(file->name);
    if (files.json)
        text += "|" + files.json->name + "|" + std::to_string(files.json->size);
    text += "|" + choice.market;
    for (const auto& category : choice.categories)
        text += "|category " + category;
    for (const auto& word : choice.words)
        text += "|word " + word;
    for (const auto& number : choice.numbers)
        text += "|" + number.digits();
    return text;
}

WorkFolder::WorkFolder(const fs::path& catalog, const std::string& fingerprint)
    : path_(catalog.string() + ".loading"), fingerprint_(fingerprint)
{
    const auto state = state_in(path_);
    if (state.is_object() && state.value("fingerprint", "") == fingerprint_ && is_whole(state, path_)) {
        done_ = state.value("done", 0) >= 2 ? Done::Amounts : Done::Heads;
        return;
    }
    fs::remove(path_ / "state"); // first: without it nothing that is left counts, wherever clearing is broken off
    fs::remove_all(path_);
    fs::create_directory(path_);
}

void WorkFolder::write_state(Done done, const ReleaseReport& report)
{
    const Json state = {{"form", form},
                        {"fingerprint", fingerprint_},
                        {"done", static_cast<int>(done)},
                        {"files", sizes_in(path_)},
                        {"report", json_of(report)}};
    const auto aside = path_ / "state.new";
    {
        std::ofstream file(aside);
        file << state.dump(-1, ' ', false, Json::error_handler_t::replace);
        if (!file.flush())
            throw std::runtime_error(aside.string() + ": cannot be written");
    }
    fs::rename(aside, path_ / "state");
    done_ = done;
}

void WorkFolder::note_heads(const std::vector<RecordHead>& heads, const RecordSet& left_out,
                            const ReleaseReport& report)
{
    left_out.write(path_ / "left_out");
    Spill spill(path_ / "heads");
    for (const auto& head : heads)
        spill.append({reinterpret_cast<const char*>(&head), sizeof head});
    spill.flush();
    write_state(Done::Heads, report);
}

void WorkFolder::note_amounts(const ReleaseReport& report)
{
    write_state(Done::Amounts, report);
}

std::vector<RecordHead> WorkFolder::heads() const
{
    const Spill spill(path_ / "heads", true);
    std::string bytes;
    spill.read(0, spill.size(), bytes);
    std::vector<RecordHead> heads(bytes.size() / sizeof(RecordHead));
    if (!heads.empty())
        std::memcpy(heads.data(), bytes.data(), heads.size() * sizeof(RecordHead));
    return heads;
}

RecordSet WorkFolder::left_out() const
{
    return RecordSet::read(path_ / "left_out");
}

ReleaseReport WorkFolder::report() const
{
    const auto state = state_in(path_);
    return report_of(state.at("report"));
}

void WorkFolder::clear() const noexcept
{
    std::error_code left; // it is cleared away by the next load
    fs::remove(path_ / "state", left);
    fs::remove_all(path_, left);
}

} // namespace catalog
