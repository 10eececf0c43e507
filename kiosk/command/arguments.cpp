#include "kiosk/command/arguments.h"

#include "core/compare/my_amount.h"
#include "kiosk/camera/camera_choices.h"
#include "kiosk/command/foot.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace kiosk {
namespace {

const std::map<std::string, core::Basis> bases{{"serving", core::Basis::Serving},
                                               {"package", core::Basis::Package},
                                               {"same", core::Basis::SameAmount},
                                               {"measure", core::Basis::SameMeasure},
                                               {"prepared", core::Basis::Prepared}};

constexpr const char* basis_help = "serving, package, same (100 g or 100 mL), measure (the same cup, spoon or piece), "
                                   "prepared, or an amount such as \"2 servings\", \"1 1/2 cups\", \"5 pieces\" or "
                                   "\"1/2 package\"";

/// A basis by its name or as an amount. Throws what CLI11 throws for a wrong value.
std::pair<core::Basis, core::MyAmount> basis_named(const std::string& option, const std::string& words)
{
    if (const auto named = bases.find(words); named != bases.end())
        return {named->second, {}};
    if (const auto amount = core::parse_my_amount(words))
        return {core::Basis::MyAmount, *amount};
    throw CLI::ValidationError(option, "\"" + words + "\" is none of " + basis_help);
}

const std::vector<std::string> themes{"paper", "night", "plain"};

constexpr const char* catalog_help = "the catalog; else $PAIRSTAND_CATALOG, else the one in your data folder, else the "
                                     "demo of invented products";

constexpr const char* settings_help =
    "the leader's settings (docs/settings.md); else $PAIRSTAND_SETTINGS, else station.conf in your folder of settings";

/// "1280x800" into two numbers.
struct Size {
    std::string text = "1280x800";

    void into(int& width, int& height) const
    {
        const auto cross = text.find('x');
        width = std::stoi(text.substr(0, cross));
        height = std::stoi(text.substr(cross + 1));
    }
};

/// Why a text is no size of a window or picture; empty when it is one.
std::string fault_of_size(const std::string& text)
{
    const auto cross = text.find('x');
    const auto good = [](const std::string& part) {
        return !part.empty() && part.size() <= 4 &&
               std::ranges::all_of(part, [](char c) { return c >= '0' && c <= '9'; });
    };
    constexpr int least = 320;
    constexpr int most = 8192;
    if (cross != std::string::npos && good(text.substr(0, cross)) && good(text.substr(cross + 1))) {
        int width = 0;
        int height = 0;
        Size{text}.into(width, height);
        if (width >= least && height >= least && width <= most && height <= most)
            return "";
    }
    return "\"" + text + "\" is no size: expected WIDTHxHEIGHT in pixels, such as 1280x800, from 320 to 8192";
}

std::string fault_of_camera(const std::string& which)
{
    return says_which_camera(which) ? "" : "\"" + which + "\" is no camera: expected auto, off or /dev/NAME";
}

void add_size(CLI::App& app, Size& size, const char* help)
{
    app.add_option("--size", size.text, help)
        ->check(CLI::Validator(fault_of_size, "WIDTHxHEIGHT"))
        ->capture_default_str();
}

void add_text_size(CLI::App& app, int& percent)
{
    app.add_option("--text-size", percent, "size of the letters in percent")
        ->check(CLI::IsMember({100, 150, 200, 300}))
        ->capture_default_str();
}

/// "--left-price 3.99": kept as text by the parser, taken over by `into`.
struct Prices {
    std::string left;
    std::string right;

    void into(std::optional<core::Money>& left_price, std::optional<core::Money>& right_price) const
    {
        if (!left.empty())
            left_price = core::parse_price(left).value();
        if (!right.empty())
            right_price = core::parse_price(right).value();
    }
};

std::string fault_of_price(const std::string& text)
{
    const auto price = core::parse_price(text);
    return price ? "" : "\"" + text + "\" is no price: expected " + price.error().place.expected;
}

void add_prices(CLI::App& app, Prices& prices)
{
    const auto check = CLI::Validator(fault_of_price, "DOLLARS");
    app.add_option("--left-price", prices.left, "shelf price of the product on the left, such as 3.99")->check(check);
    app.add_option("--right-price", prices.right, "shelf price of the product on the right")->check(check);
}

/// "--rules wic,cacfp": into their sets.
void add_rules(CLI::App& app, std::optional<std::vector<core::RuleSet>>& rules)
{
    app.add_option_function<std::string>(
        "--rules",
        [&rules](const std::string& list) {
            rules = core::rule_sets_named(list);
            if (!rules)
                throw CLI::ValidationError("--rules", "\"" + list +
                                                          "\" is no list of published rules: expected some of " +
                                                          core::rule_set_keys() + ", with commas between");
        },
        "sets of published rules that the labels are held against, with commas between; those of the settings when "
        "left out: " +
            core::rule_set_keys());
}

void add_theme(CLI::App& app, std::string& theme)
{
    app.add_option("--theme", theme, "colours")->check(CLI::IsMember(themes))->capture_default_str();
}

/// "language of the answer: en, es".
void add_language(CLI::App& app, std::string& code, const std::string& help, const std::string& languages)
{
    app.add_option("--lang", code, languages.empty() ? help : help + ": " + languages)->capture_default_str();
}

void add_station(CLI::App& app, StationArguments& station, Size& size, const std::string& languages)
{
    app.add_option("--catalog", station.catalog, catalog_help);
    app.add_option("--settings", station.settings, settings_help);
    app.add_flag("--fullscreen", station.fullscreen, "fill the screen (F11 changes it, Ctrl+Q closes the station)");
    add_size(app, size, "size of the window");
    add_language(app, station.language, "language to begin with", languages);
    add_text_size(app, station.text_percent);
    add_theme(app, station.theme);
    app.add_option("--camera", station.camera, "auto, off, or a device such as /dev/video0, whatever the settings say")
        ->check(CLI::Validator(fault_of_camera, "CAMERA"));
    app.add_option("--camera-source", station.camera_source,
                   "the beginning of a GStreamer pipeline in place of a camera");
    app.add_flag("--silent", station.silent, "play no sounds");
    app.add_flag("--desk", station.desk, "the leader desk can be reached by touch: load, look through, install, undo");
    app.add_option("--files", station.files, "a folder that the leader desk looks into beside the sticks")
        ->type_name("FOLDER");
    app.add_option("--trace", station.trace, "write a line for each answered scan and each drawn frame into this file");
}

void add_load(CLI::App& app, LoadArguments& load, const std::string& languages)
{
    app.add_option("SOURCE", load.sources,
                   "sheets, one product a row, saved as CSV, .xlsx or .ods (docs/sheet.md); or a FoodData Central "
                   "release: its folder, zip or JSON file (docs/release.md)")
        ->required();
    app.add_option("--into", load.into, "the catalog to load into; made when it is not there")->required();
    app.add_flag("--keep-good-rows", load.keep_good_rows, "take the rows without a fault although others have one");
    app.add_option("--category", load.categories, "of a release: only this category, as it names it; may be repeated")
        ->type_name("NAME");
    app.add_option("--word", load.words, "of a release: only products with this word in their name; may be repeated")
        ->type_name("WORD");
    app.add_option("--market", load.market, "of a release: only products sold there, such as \"United States\"")
        ->type_name("COUNTRY");
    app.add_option("--numbers", load.numbers,
                   "of a release: a file with the product numbers that are wanted, one a line")
        ->type_name("FILE");
    add_language(app, load.language, "language of what is said", languages);
    app.footer(
        "With any fault in a sheet nothing is loaded, unless the good rows are asked for. Of a release every sound "
        "record is taken, and the report counts the others.\n" +
        std::string(foot));
}

void add_compare(CLI::App& app, CompareArguments& compare, Prices& prices, const std::string& languages)
{
    app.add_option("LEFT", compare.left, "code of the product on the left, as printed under its bars")->required();
    app.add_option("RIGHT", compare.right, "code of the product on the right")->required();
    add_prices(app, prices);
    app.add_option_function<std::string>(
        "--per",
        [&compare](const std::string& words) { std::tie(compare.basis, compare.amount) = basis_named("--per", words); },
        std::string(basis_help) + "; all that can be had when left out");
    add_rules(app, compare.rules);
    app.add_flag("--json", compare.json, "for programs: the form is described in docs/json.md");
    app.add_option("--catalog", compare.catalog, catalog_help);
    app.add_option("--settings", compare.settings, settings_help);
    add_language(app, compare.language, "language of the answer", languages);
    app.footer(foot);
}

void add_decode(CLI::App& app, DecodeArguments& decode)
{
    app.add_option("IMAGE", decode.images, "pictures of bar codes (PNG, JPEG, PGM, ...)")->required();
    app.footer("One line an image: file, symbology and GTIN-14 with tabs between; an unread one has '-' for both.\n" +
               std::string(foot));
}

void add_render(CLI::App& app, RenderArguments& render, Size& size, Prices& prices, const std::string& languages,
                const std::string& screens)
{
    app.add_option("SCREEN", render.screen, (screens.empty() ? "" : screens + ", ") + "or all")->required();
    app.add_option("--out", render.out, "the PNG file to write; a folder for all")->required();
    app.add_option("--left", render.left, "code that is scanned first");
    app.add_option("--right", render.right, "code that is scanned second");
    add_prices(app, prices);
    app.add_option_function<std::string>(
        "--basis",
        [&render](const std::string& words) { std::tie(render.basis, render.amount) = basis_named("--basis", words); },
        basis_help);
    app.add_option("--words", render.words, "for find_by_name: what is typed");
    app.add_option("--nutrient", render.nutrient, "for why: its name as in a sheet, such as sodium")
        ->check(CLI::Validator(
            [](const std::string& key) {
                return core::nutrient_by_key(key) ? std::string() : "\"" + key + "\" is no nutrient of docs/sheet.md";
            },
            "NUTRIENT"));
    add_rules(app, render.rules);
    app.add_option("--files", render.files, "for the leader desk: the folder that it looks into")->type_name("FOLDER");
    app.add_option("--file", render.file, "for the leader desk: the name of the file to open; else the first")
        ->type_name("NAME");
    app.add_option("--page", render.page, "page of the screen")->check(CLI::Range(1, 99))->capture_default_str();
    add_size(app, size, "size of the picture");
    add_text_size(app, render.text_percent);
    app.add_option("--glass-mm", render.glass_mm, "how wide the glass is that the picture stands for, in millimetres")
        ->check(CLI::Range(100, 3000))
        ->type_name("MM");
    add_language(app, render.language, "language of the picture", languages);
    add_theme(app, render.theme);
    app.add_option("--catalog", render.catalog, catalog_help);
    app.add_option("--settings", render.settings, settings_help);
    app.footer(foot);
}

/// CLI11's words as one sentence that ends with where help is.
std::string one_sentence(std::string words, const std::string& command)
{
    std::ranges::replace(words, '\n', ' ');
    return words + "; 'pairstand " + command + "--help' says what is expected";
}

/// Hands what stands before a command, "--lang es compare A B", on to the command. Returns what cannot be handed on,
/// so that nothing is passed over in silence; empty when all was. Throws what CLI11 throws for a wrong value.
std::string hand_on(const CLI::App& app, CLI::App& command)
{
    for (const CLI::Option* given : app.get_options([](const CLI::Option* option) { return option->count() > 0; })) {
        CLI::Option* const taker = command.get_option_no_throw(given->get_name());
        const std::string what = given->get_name() + " stands before '" + command.get_name() + "'";
        if (!taker)
            return what + ", which does not have that option";
        if (taker->count() > 0)
            return what + " and behind it: give it once";
        for (const auto& result : given->results())
            taker->add_result(result);
        taker->run_callback();
    }
    return "";
}

/// Whether --help or --version was asked for, and of which command; CLI11 reports both as errors of status 0.
Command ended(const CLI::App& app, const CLI::ParseError& end)
{
    const auto asked = app.get_subcommands();
    const CLI::App& about = asked.empty() ? app : *asked.front();
    if (end.get_exit_code() != 0)
        return Misused{one_sentence(end.what(), asked.empty() ? "" : about.get_name() + " ")};
    if (dynamic_cast<const CLI::CallForVersion*>(&end))
        return Printed{std::string(end.what()) + "\n"};
    std::string help = about.help(asked.empty() ? "" : app.get_name());
    if (!help.ends_with('\n'))
        help += '\n';
    return Printed{help};
}

} // namespace

Command read_arguments(std::vector<std::string> arguments, const std::string& languages, const std::string& screens)
{
    CLI::App app("Two food labels side by side. Without a command: opens the station.", "pairstand");
    app.set_version_flag("--version", std::string("pairstand ") + PAIRSTAND_VERSION);
    app.require_subcommand(0, 1);
    StationArguments station;
    LoadArguments load;
    CompareArguments compare;
    compare.language = "en";
    DecodeArguments decode;
    RenderArguments render;
    KeysArguments keys;
    SealArguments seal;
    InstallArguments install;
    ExportArguments sheets;
    AuditArguments audit;
    Size window;
    Size picture;
    Prices compared;
    Prices drawn;
    add_station(app, station, window, languages);
    app.footer("The commands work without a display; 'pairstand COMMAND --help' explains each.\n" + std::string(foot));
    auto* const load_command = app.add_subcommand("load", "put the products of sheets into a catalog");
    auto* const compare_command = app.add_subcommand("compare", "two products side by side, in words");
    auto* const decode_command = app.add_subcommand("decode", "which product code is in a picture");
    auto* const render_command = app.add_subcommand("render", "draw a screen into a PNG file");
    auto* const keys_command = app.add_subcommand("keys", "the leader's key, with which bundles are sealed");
    auto* const seal_command = app.add_subcommand("seal", "put a catalog into one sealed file, for other stations");
    auto* const install_command = app.add_subcommand("install", "put a sealed bundle on this station, or go back");
    auto* const audit_command = app.add_subcommand("audit", "what is wrong or doubtful in labels");
    add_audit(*audit_command, audit, languages);
    add_load(*load_command, load, languages);
    add_compare(*compare_command, compare, compared, languages);
    add_decode(*decode_command, decode);
    add_render(*render_command, render, picture, drawn, languages, screens);
    add_keys(*keys_command, keys, languages);
    add_seal(*seal_command, seal, languages);
    auto* const export_command = app.add_subcommand("export", "write a catalog as sheets that load again");
    add_export(*export_command, sheets, languages);
    add_install(*install_command, install, languages);

    std::ranges::reverse(arguments); // as CLI11 takes them
    try {
        app.parse(std::move(arguments));
        for (CLI::App* command : app.get_subcommands())
            if (const auto left = hand_on(app, *command); !left.empty())
                return Misused{one_sentence(left, command->get_name() + " ")};
    } catch (const CLI::ParseError& end) {
        return ended(app, end);
    }
    window.into(station.width, station.height);
    picture.into(render.width, render.height);
    compared.into(compare.left_price, compare.right_price);
    drawn.into(render.left_price, render.right_price);
    if (load_command->parsed())
        return load;
    if (compare_command->parsed())
        return compare;
    if (decode_command->parsed())
        return decode;
    if (render_command->parsed())
        return render;
    if (keys_command->parsed())
        return keys;
    if (seal_command->parsed())
        return seal;
    if (export_command->parsed())
        return sheets;
    if (install_command->parsed())
        return install;
    if (audit_command->parsed())
        return audit;
    return station;
}

} // namespace kiosk
