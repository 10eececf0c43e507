#include "tests/demo/demo_files.h"

#include <fstream>
#include <iterator>
#include <stdexcept>

namespace test::demo {

std::string demo_file(const std::string& name)
{
    return std::string(PAIRSTAND_SOURCE) + "/config/demo/" + name;
}

std::string bytes_of(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw std::runtime_error("cannot read " + path);
    return {std::istreambuf_iterator<char>(file), {}};
}

const std::vector<TrueFood>& true_foods()
{
    static const auto foods = read_true_foods(demo_file("true_foods.csv"));
    return foods;
}

const catalog::Sheet& cedar_hollow()
{
    static const auto sheet = catalog::read_sheet_file(demo_file("cedar_hollow.csv"));
    return sheet;
}

const core::Product& product(const std::string& gtin)
{
    const auto wanted = core::Gtin::parse(gtin).value();
    for (const auto& product : cedar_hollow().products)
        if (product.gtin == wanted)
            return product;
    throw std::runtime_error("the demo catalog has no product " + gtin);
}

} // namespace test::demo
