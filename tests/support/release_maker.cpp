#include "tests/support/release_maker.h"

#include "core/code/gtin.h"
#include "core/figure/wide.h"
#include "tests/support/release_codes.h"
#include "tests/support/release_figures.h"
#include "tests/support/release_texts.h"

#include <cstdio>
#include <memory>
#include <numeric>
#include <stdexcept>

namespace test {
namespace {

/// A CSV file as published: every field in quotes, a quote inside doubled, lines ended by LF.
class PublishedCsv {
public:
    PublishedCsv(const std::filesystem::path& file, const std::string& header)
        : file_(std::fopen(file.c_str(), "wb")), path_(file)
    {
        if (!file_)
            throw std::runtime_error("cannot write " + file.string());
        text_ = header + "\n";
    }
    PublishedCsv(const PublishedCsv&) = delete;
    PublishedCsv& operator=(const PublishedCsv&) = delete;
    ~PublishedCsv() = default;

    PublishedCsv& field(std::string_view text)
    {
        text_ += at_start_ ? "\"" : ",\"";
        at_start_ = false;
        for (const char letter : text)
            text_.append(letter == '"' ? 2 : 1, letter);
        text_ += '"';
        return *this;
    }
    void empty_fields(int count)
    {
        for (int i = 0; i < count; ++i)
            field("");
    }
    void end_row()
    {
        text_ += '\n';
        at_start_ = true;
        if (text_.size() > (1U << 20U))
            write();
    }
    /// Writes what is left; how many bytes the file has.
    std::uintmax_t finish()
    {
        write();
        file_.reset();
        return std::filesystem::file_size(path_);
    }

private:
    struct Close {
        void operator()(std::FILE* file) const { std::fclose(file); }
    };
    void write()
    {
        if (std::fwrite(text_.data(), 1, text_.size(), file_.get()) != text_.size())
            throw std::runtime_error("cannot write " + path_.string());
        text_.clear();
    }

    std::unique_ptr<std::FILE, Close> file_;
    std::filesystem::path path_;
    std::string text_;
    bool at_start_ = true;
};

std::string header_of(const std::vector<std::string>& columns)
{
    std::string header;
    for (const auto& column : columns)
        header += (header.empty() ? "\"" : ",\"") + column + "\"";
    return header;
}

std::vector<std::string> branded_columns(ReleaseYear year)
{
    if (year == ReleaseYear::Of2019)
        return {"fdc_id",
                "brand_owner",
                "gtin_upc",
                "ingredients",
                "serving_size",
                "serving_size_unit",
                "household_serving_fulltext",
                "branded_food_category",
                "data_source",
                "modified_date",
                "available_date"};
    std::vector<std::string> columns = {"fdc_id",
                                        "brand_owner",
                                        "brand_name",
                                        "subbrand_name",
                                        "gtin_upc",
                                        "ingredients",
                                        "not_a_significant_source_of",
                                        "serving_size",
                                        "serving_size_unit",
                                        "household_serving_fulltext",
                                        "branded_food_category",
                                        "data_source",
                                        "package_weight",
                                        "modified_date",
                                        "available_date",
                                        "market_country",
                                        "discontinued_date",
                                        "preparation_state_code",
                                        "trade_channel",
                                        "short_description"};
    if (year == ReleaseYear::Of2026)
        columns.push_back("material_code");
    return columns;
}

std::vector<std::string> nutrient_columns(ReleaseYear year)
{
    std::vector<std::string> columns = {"id",  "fdc_id", "nutrient_id", "amount", "data_points", "derivation_id",
                                        "min", "max",    "median"};
    if (year != ReleaseYear::Of2019)
        columns.push_back("loq");
    columns.push_back("footnote");
    columns.push_back("min_year_acquired");
    if (year == ReleaseYear::Of2026)
        columns.push_back("percent_daily_value");
    return columns;
}

/// Walks 0 .. count-1 in an order that has nothing to do with the numbers.
class Shuffled {
public:
    Shuffled(std::size_t count, std::uint64_t step) : count_(count), step_(step % count)
    {
        while (std::gcd(step_, static_cast<std::uint64_t>(count_)) != 1)
            ++step_;
    }
    [[nodiscard]] std::size_t operator[](std::size_t place) const
    {
        return static_cast<std::size_t>((static_cast<core::Wide>(place) * step_ + 1) % count_);
    }

private:
    std::size_t count_;
    std::uint64_t step_;
};

/// The texts of a record, made anew for every file that needs them.
struct Texts {
    std::string maker;
    std::string brand;
    std::string ingredients;
    std::string household;
    std::string weight;
    const char* category = "";
};

class Maker {
public:
    Maker(const ReleaseShape& shape, const std::filesystem::path& folder,
          const std::function<void(const MadeRecord&)>& see)
        : shape_(shape), folder_(folder), see_(see), records_(shape.products + shape.products / 20)
    {
    }

    MadeRelease make()
    {
        std::filesystem::create_directories(folder_);
        made_.records = records_;
        food();
        branded();
        nutrients();
        nutrient_names();
        return made_;
    }

private:
    /// The record at a place: the newest ones of all products, then the older ones of some.
    MadeRecord record(std::size_t place, Texts* texts)
    {
        MadeRecord record;
        record.newest = place < shape_.products;
        const std::size_t product = record.newest ? place : (place - shape_.products) * 19 % shape_.products;
        Dice dice(shape_.seed * 1'000'003 + place);
        record.fdc_id = static_cast<std::uint32_t>(
            344'000 + (record.newest ? records_ - shape_.products + place : place - shape_.products));
        const auto code = release_code(product, shape_.odd_codes, record.newest);
        record.gtin_14 = code.gtin_14;
        record.code = code.written;
        Dice names(shape_.seed * 77 + product); // every record of a product has its name
        record.name = food_name(names);
        record.published_on = published_on(dice, record.newest);
        const bool older_panel = record.published_on < "2021";
        Dice figures(shape_.seed * 31 + place);
        make_figures(figures, older_panel, record);
        if (texts)
            *texts = {maker_name(names),           brand_name(names), ingredient_list(dice), "", "",
                      category_text(names, record)};
        return record;
    }

    std::string published_on(Dice& dice, bool newest) const
    {
        const int last = shape_.year == ReleaseYear::Of2019 ? 2019 : shape_.year == ReleaseYear::Of2023 ? 2023 : 2026;
        const int first = newest && last > 2019 ? 2020 : 2019;
        const int year =
            newest ? first + static_cast<int>(roll(dice, static_cast<std::uint64_t>(last - first + 1))) : 2019;
        const std::uint64_t month = newest ? 4 + roll(dice, 7) : 1 + roll(dice, 3);
        const auto two = [](std::uint64_t number) { return (number < 10 ? "0" : "") + std::to_string(number); };
        return std::to_string(year) + "-" + two(month) + "-" + two(1 + roll(dice, 28));
    }

    void food()
    {
        PublishedCsv csv(folder_ / "food.csv",
                         header_of({"fdc_id", "data_type", "description", "food_category_id", "publication_date"}));
        const Shuffled order(records_, 7'919);
        for (std::size_t i = 0; i < records_; ++i) {
            const auto made = record(order[i], nullptr);
            csv.field(std::to_string(made.fdc_id))
                .field("branded_food")
                .field(made.name)
                .field("")
                .field(made.published_on);
            csv.end_row();
            if (i % 50 == 0) { // the full download holds foods of other kinds too
                csv.field(std::to_string(167'000 + i))
                    .field("sr_legacy_food")
                    .field("Oil, seal, plain")
                    .field("")
                    .field("2019-04-01");
                csv.end_row();
            }
            if (see_)
                see_(made);
        }
        made_.bytes += csv.finish();
    }

    void branded()
    {
        PublishedCsv csv(folder_ / "branded_food.csv", header_of(branded_columns(shape_.year)));
        const Shuffled order(records_, 104'729);
        for (std::size_t i = 0; i < records_; ++i) {
            Texts texts;
            const auto made = record(order[i], &texts);
            branded_row(csv, made, texts);
        }
        made_.bytes += csv.finish();
    }

    void branded_row(PublishedCsv& csv, const MadeRecord& made, const Texts& texts)
    {
        Dice dice(made.fdc_id);
        const bool with_household = made.published_on < "2020-11" || made.published_on > "2021-10";
        const std::string household = with_household ? household_text(dice, made) : "";
        const auto source = made.code.size() == 14 ? "GDSN" : "LI";
        csv.field(std::to_string(made.fdc_id)).field(texts.maker);
        if (shape_.year == ReleaseYear::Of2019) {
            csv.field(made.code)
                .field(texts.ingredients)
                .field(serving_text(made))
                .field(unit_text(dice, made))
                .field(household);
            csv.field(texts.category).field(source).field(made.published_on).field(made.published_on);
            csv.end_row();
            return;
        }
        csv.field(happens(dice, 710) ? texts.brand : "").field(happens(dice, 50) ? "ORIGINAL" : "").field(made.code);
        csv.field(texts.ingredients)
            .field(happens(dice, 40) ? "Not a significant source of trans fat and added sugars" : "");
        csv.field(serving_text(made)).field(unit_text(dice, made)).field(household).field(texts.category).field(source);
        csv.field(made.published_on < "2021-06" ? "" : weight_text(dice, made))
            .field(made.published_on)
            .field(made.published_on);
        csv.field("United States").field("");
        csv.field(happens(dice, 24) ? "UNPREPARED" : "").field(happens(dice, 11) ? "NO_TRADE_CHANNEL" : "");
        csv.field(happens(dice, 24) ? made.name.substr(0, 20) : "");
        if (shape_.year == ReleaseYear::Of2026)
            csv.field("");
        csv.end_row();
    }

    void nutrients()
    {
        PublishedCsv csv(folder_ / "food_nutrient.csv", header_of(nutrient_columns(shape_.year)));
        const Shuffled order(records_, 15'485'863);
        if (!shape_.rows_torn_apart) {
            for (std::size_t i = 0; i < records_; ++i) {
                const auto made = record(order[i], nullptr);
                for (const auto& figure : made.figures)
                    nutrient_row(csv, made, figure);
            }
        } else {
            for (std::size_t row = 0; row < most_figures; ++row)
                for (std::size_t i = 0; i < records_; ++i)
                    if (const auto made = record(order[i], nullptr); row < made.figures.size())
                        nutrient_row(csv, made, made.figures[row]);
        }
        made_.bytes += csv.finish();
    }

    void nutrient_row(PublishedCsv& csv, const MadeRecord& made, const MadeFigure& figure)
    {
        ++made_.nutrient_rows;
        csv.field(std::to_string(3'000'000 + made_.nutrient_rows)).field(std::to_string(made.fdc_id));
        csv.field(std::to_string(figure.published_id)).field(figure.per_100).field("");
        csv.field(figure.less_than ? "73" : figure.by_percent ? "75" : "70");
        csv.empty_fields(static_cast<int>(nutrient_columns(shape_.year).size()) - 6);
        csv.end_row();
    }

    void nutrient_names()
    {
        PublishedCsv csv(folder_ / "nutrient.csv", header_of({"id", "name", "unit_name", "nutrient_nbr", "rank"}));
        for (const auto& named : published_nutrients()) {
            csv.field(std::to_string(named.id)).field(named.name).field(named.unit).field(named.number).field("9999");
            csv.end_row();
        }
        made_.bytes += csv.finish();
    }

    ReleaseShape shape_;
    std::filesystem::path folder_;
    std::function<void(const MadeRecord&)> see_;
    std::size_t records_;
    MadeRelease made_;
};

} // namespace

MadeRelease make_release(const ReleaseShape& shape, const std::filesystem::path& folder,
                         const std::function<void(const MadeRecord&)>& see)
{
    return Maker(shape, folder, see).make();
}

std::string make_plain_release(const std::filesystem::path& folder, std::size_t products)
{
    ReleaseShape shape;
    shape.products = products;
    shape.odd_codes = false;
    make_release(shape, folder);
    return folder.string();
}

} // namespace test
