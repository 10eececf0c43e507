#include "catalog/bundle/manifest.h"

#include "catalog/read/text.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>

namespace catalog {
namespace {

using Json = nlohmann::json;
using Kind = core::Error::Kind;

constexpr int form = 1;
constexpr int deepest = 3; // an object with a list of objects
constexpr std::size_t most_parts = 200;
constexpr std::uint64_t largest_part = 1ULL << 40U; // a thousand gigabytes: sums of parts never run over

/// The manifest as JSON, nothing when it is none or nested deeper than any manifest.
Json parsed(std::string_view text)
{
    bool too_deep = false;
    const auto look = [&too_deep](int depth, Json::parse_event_t event, Json&) {
        const bool opens = event == Json::parse_event_t::object_start || event == Json::parse_event_t::array_start;
        too_deep = too_deep || (opens && depth >= deepest);
        return !too_deep;
    };
    Json json = Json::parse(text, look, false);
    return too_deep ? Json(Json::value_t::discarded) : json;
}

/// A text of an object; empty when it is not there or no text.
std::string text_at(const Json& object, const char* key)
{
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

/// A whole number of an object from 0 to `largest`; nothing when it is not there or another.
std::optional<std::uint64_t> number_at(const Json& object, const char* key, std::uint64_t largest)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_number_unsigned())
        return std::nullopt;
    const auto number = found->get<std::uint64_t>();
    return number <= largest ? std::optional(number) : std::nullopt;
}

bool is_part_name(std::string_view name)
{
    if (name == catalog_part || name == tour_part)
        return true;
    return name.starts_with(texts_folder) && is_text_name(name.substr(std::string_view(texts_folder).size()));
}

std::optional<Part> part_in(const Json& json)
{
    if (!json.is_object())
        return std::nullopt;
    const auto bytes = number_at(json, "bytes", largest_part);
    const auto digest = bytes_of_hex(text_at(json, "blake2b"));
    Part part{text_at(json, "name"), bytes.value_or(0), digest.value_or(Digest{})};
    if (!bytes || !digest || !is_part_name(part.name))
        return std::nullopt;
    return part;
}

/// The parts: every name once, the catalog among them. Nothing when they are not so.
std::optional<std::vector<Part>> parts_in(const Json& object)
{
    const auto list = object.find("parts");
    if (list == object.end() || !list->is_array() || list->size() > most_parts)
        return std::nullopt;
    std::vector<Part> parts;
    std::set<std::string> names;
    for (const auto& json : *list) {
        auto part = part_in(json);
        if (!part || !names.insert(part->name).second)
            return std::nullopt;
        parts.push_back(std::move(*part));
    }
    if (!names.contains(catalog_part))
        return std::nullopt;
    return parts;
}

auto damaged(const char* detail)
{
    return core::refuse(Kind::DamagedBundle, detail);
}

} // namespace

bool is_text_name(std::string_view name)
{
    const auto is_plain = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' || c == '-' ||
               c == '_';
    };
    constexpr std::size_t longest = 64;
    return !name.empty() && name.size() <= longest && name.front() != '.' && std::ranges::all_of(name, is_plain);
}

bool is_plain_words(std::string_view words, std::size_t longest)
{
    constexpr std::size_t bytes_a_letter = 4;
    return !words.empty() && words.size() <= longest * bytes_a_letter && tidy(words) == std::string(words) &&
           letters_in(words) <= longest;
}

std::string manifest_text(const Manifest& manifest)
{
    auto parts = nlohmann::ordered_json::array();
    for (const auto& part : manifest.parts)
        parts.push_back({{"name", part.name}, {"bytes", part.bytes}, {"blake2b", hex_of(part.digest)}});
    const nlohmann::ordered_json json{
        {"format", form},           {"name", manifest.name},       {"maker", manifest.maker},
        {"made", manifest.made},    {"counter", manifest.counter}, {"products", manifest.products},
        {"parts", std::move(parts)}};
    return json.dump(1) + "\n";
}

core::Result<Manifest> read_manifest(std::string_view text)
{
    if (text.size() > longest_manifest)
        return damaged("its manifest is too long");
    const Json json = parsed(text);
    if (!json.is_object())
        return damaged("its manifest is no JSON object");
    const auto written = number_at(json, "format", largest_counter);
    if (written && *written > form)
        return core::refuse(Kind::NewerBundle, "its manifest has a later form");
    const auto counter = number_at(json, "counter", largest_counter);
    const auto products = number_at(json, "products", largest_counter);
    auto parts = parts_in(json);
    Manifest manifest{text_at(json, "name"), text_at(json, "maker"), text_at(json, "made"),
                      counter.value_or(0),   products.value_or(0),   parts ? std::move(*parts) : std::vector<Part>{}};
    constexpr std::size_t longest_date = 40;
    const bool words =
        is_plain_words(manifest.name) && is_plain_words(manifest.maker) && is_plain_words(manifest.made, longest_date);
    if (written != form || !words || manifest.counter == 0 || !products || manifest.parts.empty())
        return damaged("its manifest lacks something or says what cannot be");
    return manifest;
}

} // namespace catalog
