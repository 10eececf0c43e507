#include "catalog/read/csv.h"

#include <algorithm>
#include <csv.h>
#include <exception>
#include <new>

namespace catalog {
namespace {

/// Collects cells between the calls of the library. Nothing may be thrown through it, since it is C.
class Rows {
public:
    explicit Rows(const std::function<void(const CsvRow&)>& take) : take_(take) {}

    static void cell(void* bytes, std::size_t length, void* self) { static_cast<Rows*>(self)->add(bytes, length); }
    static void end(int, void* self) { static_cast<Rows*>(self)->finish(); }

    /// The row under way cannot be read.
    void fail()
    {
        row_.cells.clear();
        row_.bad_quote = true;
        finish();
        row_.bad_quote = false;
    }

    void rethrow() const
    {
        if (thrown_)
            std::rethrow_exception(thrown_);
    }
    [[nodiscard]] std::size_t finished() const { return finished_; }

private:
    void add(const void* bytes, std::size_t length) noexcept
    {
        ++row_.cell_count;
        if (row_.cell_count > most_cells || thrown_)
            return;
        try {
            row_.cells.emplace_back(static_cast<const char*>(bytes), length);
        } catch (...) {
            thrown_ = std::current_exception();
        }
    }

    void finish() noexcept
    {
        row_.number = ++finished_;
        if (!thrown_) {
            try {
                take_(row_);
            } catch (...) {
                thrown_ = std::current_exception();
            }
        }
        row_.cells.clear();
        row_.cell_count = 0;
    }

    const std::function<void(const CsvRow&)>& take_;
    CsvRow row_;
    std::size_t finished_ = 0;
    std::exception_ptr thrown_;
};

/// The parser of the library; its lifetime is its memory.
class Parser {
public:
    explicit Parser(char separator)
    {
        if (csv_init(&parser_, CSV_REPALL_NL | CSV_STRICT | CSV_STRICT_FINI) != 0)
            throw std::bad_alloc();
        csv_set_delim(&parser_, static_cast<unsigned char>(separator));
        csv_set_term_func(&parser_, [](unsigned char c) { return c == '\n' ? 1 : 0; });
        csv_set_blk_size(&parser_, 4096); // long cells grow in steps that are worth their copying
    }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;
    ~Parser() { csv_free(&parser_); }

    /// False at a quote that may not stand there.
    [[nodiscard]] bool feed(std::string_view line, Rows& rows)
    {
        const bool read = csv_parse(&parser_, line.data(), line.size(), Rows::cell, Rows::end, &rows) == line.size();
        rows.rethrow();
        if (!read && csv_error(&parser_) != CSV_EPARSE)
            throw std::bad_alloc(); // it knows no other error
        return read;
    }

    /// False when a quote is still open.
    [[nodiscard]] bool close(Rows& rows)
    {
        const bool closed = csv_fini(&parser_, Rows::cell, Rows::end, &rows) == 0;
        rows.rethrow();
        return closed;
    }

private:
    csv_parser parser_{};
};

/// Where the line ends that begins at `at`, its line break included.
std::size_t line_end(std::string_view text, std::size_t at)
{
    const auto end = text.find('\n', at);
    return end == std::string_view::npos ? text.size() : end + 1;
}

/// Reads rows up to the end or to the first row with a bad quote, of which only the first line is taken off.
/// Returns how many bytes are done.
std::size_t read_until_bad_quote(std::string_view text, char separator, Rows& rows)
{
    Parser parser(separator);
    std::size_t row_start = 0;
    for (std::size_t at = 0; at < text.size();) {
        const auto next = line_end(text, at);
        const auto finished = rows.finished();
        const bool read = parser.feed(text.substr(at, next - at), rows);
        at = next;
        if (rows.finished() != finished)
            row_start = at;
        if (!read || (at == text.size() && !parser.close(rows))) {
            rows.fail();
            return line_end(text, row_start);
        }
    }
    return text.size();
}

} // namespace

char take_separator_line(std::string_view& text)
{
    const auto end = text.find('\n');
    auto line = text.substr(0, end);
    if (line.size() >= 2 && line.front() == '"' && line.back() == '"')
        line = line.substr(1, line.size() - 2);
    if (line.size() != 5 || (line.substr(0, 4) != "sep=" && line.substr(0, 4) != "SEP="))
        return 0;
    const char separator = line.back();
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    return separator;
}

void for_each_row(std::string_view text, char separator, const std::function<void(const CsvRow&)>& take)
{
    Rows rows(take);
    while (!text.empty())
        text.remove_prefix(read_until_bad_quote(text, separator, rows));
}

CsvRow first_row(std::string_view text, char separator)
{
    CsvRow first;
    // A header is short: what has no end within this many bytes is none.
    constexpr std::size_t enough = 65'536;
    for_each_row(text.substr(0, enough), separator, [&](const CsvRow& row) {
        if (first.number == 0 && row.cell_count > 0)
            first = row;
    });
    return first;
}

} // namespace catalog
