#include "kiosk/app.h"
#include "kiosk/command/arguments.h"
#include "kiosk/command/audit.h"
#include "kiosk/command/bundle.h"
#include "kiosk/command/compare.h"
#include "kiosk/command/decode.h"
#include "kiosk/command/export.h"
#include "kiosk/command/load.h"
#include "kiosk/command/render.h"
#include "kiosk/desk/today.h"
#include "kiosk/files/data_folder.h"
#include "kiosk/files/languages.h"
#include "ui/screens/screens.h"

#include <exception>
#include <iostream>
#include <stdexcept>
#include <string>
#include <variant>
#include <vector>

namespace {

/// Does what was asked for; returns the exit status.
struct Do {
    int operator()(const kiosk::StationArguments& station) const { return kiosk::open_station(station, std::cerr); }
    int operator()(const kiosk::LoadArguments& load) const { return kiosk::load(load, std::cout, std::cerr); }
    int operator()(const kiosk::CompareArguments& pair) const { return kiosk::compare(pair, std::cout, std::cerr); }
    int operator()(const kiosk::DecodeArguments& decode) const
    {
        return kiosk::decode(decode.images, std::cout, std::cerr);
    }
    int operator()(const kiosk::RenderArguments& render) const { return kiosk::render(render, std::cout, std::cerr); }
    int operator()(const kiosk::ExportArguments& sheets) const
    {
        return kiosk::export_sheets(sheets, std::cout, std::cerr);
    }
    int operator()(const kiosk::KeysArguments& keys) const { return kiosk::keys(keys, std::cout, std::cerr); }
    int operator()(const kiosk::SealArguments& seal) const
    {
        return kiosk::seal(seal, kiosk::words_of_today(), std::cout, std::cerr);
    }
    int operator()(const kiosk::InstallArguments& install) const
    {
        return kiosk::install(install, std::cout, std::cerr);
    }
    int operator()(const kiosk::AuditArguments& audit) const
    {
        return kiosk::audit(audit, kiosk::words_of_today(), std::cout, std::cerr);
    }
    int operator()(const kiosk::Printed& printed) const
    {
        std::cout << printed.text;
        return 0;
    }
    int operator()(const kiosk::Misused& misused) const
    {
        std::cerr << "pairstand: " << misused.sentence << '\n';
        return 2;
    }
};

/// For the help.
std::string screens()
{
    std::string names;
    for (const auto& screen : ui::screens())
        names.append(names.empty() ? "" : ", ").append(screen.name);
    return names;
}

/// For the help, which is there even when the program's data is not.
std::string languages()
{
    try {
        return kiosk::language_codes(kiosk::data_folder());
    } catch (const std::runtime_error&) {
        return "";
    }
}

} // namespace

int main(int argc, char** argv)
{
    const std::vector<std::string> words(argv + 1, argv + argc);
    try {
        return std::visit(Do{}, kiosk::read_arguments(words, languages(), screens()));
    } catch (const std::exception& broken) {
        std::cerr << "pairstand: " << broken.what() << '\n';
        return 2;
    }
}
