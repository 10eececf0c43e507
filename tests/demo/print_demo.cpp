// print_demo TRUE_FOODS OUT: prints the demo catalog's labels from its true foods, as a sheet.
#include "tests/demo/label_printer.h"

#include <exception>
#include <fstream>
#include <iostream>

int main(int count, char** words)
{
    if (count != 3) {
        std::cerr << "print_demo TRUE_FOODS OUT: for example config/demo/true_foods.csv config/demo/cedar_hollow.csv\n";
        return 2;
    }
    try {
        const std::string sheet = test::demo::printed_sheet(test::demo::read_true_foods(words[1]));
        std::ofstream out(words[2], std::ios::binary);
        out << sheet << std::flush;
        if (!out)
            throw std::runtime_error("cannot write " + std::string(words[2]));
    } catch (const std::exception& error) {
        std::cerr << "print_demo: " << error.what() << '\n';
        return 2;
    }
    return 0;
}
