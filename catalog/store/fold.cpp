#include "catalog/store/fold.h"

#include <array>
#include <cstdint>
#include <utf8proc.h>

namespace catalog {
namespace {

constexpr char left_out = 1;

/// What becomes of each sign of ASCII: 0 stands between words.
constexpr std::array<char, 128> ascii = [] {
    std::array<char, 128> signs{};
    for (char c = '0'; c <= '9'; ++c)
        signs[static_cast<std::size_t>(c)] = c;
    for (char c = 'a'; c <= 'z'; ++c) {
        signs[static_cast<std::size_t>(c)] = c;
        signs[static_cast<std::size_t>(c - 'a' + 'A')] = c;
    }
    signs['\''] = left_out;
    return signs;
}();

/// Puts words together, one blank between two.
class Words {
public:
    explicit Words(std::string& out) : out_(out) { out_.clear(); }

    void letter(std::string_view bytes)
    {
        if (!in_word_ && !out_.empty())
            out_ += ' ';
        if (!in_word_)
            start_ = out_.size();
        in_word_ = true;
        if (out_.size() - start_ + bytes.size() <= longest_word)
            out_ += bytes;
        else
            start_ = out_.size() - longest_word; // full: what follows is cut, whatever its length
    }
    void between() { in_word_ = false; }

private:
    std::string& out_;
    std::size_t start_ = 0;
    bool in_word_ = false;
};

/// Letters that Unicode does not take apart, as people type them.
std::string_view plain(utf8proc_int32_t letter)
{
    switch (letter) {
    case 0xE6:
        return "ae";
    case 0xF0:
    case 0x111:
        return "d";
    case 0xF8:
        return "o";
    case 0xFE:
        return "th";
    case 0x127:
        return "h";
    case 0x131:
        return "i";
    case 0x142:
        return "l";
    case 0x153:
        return "oe";
    default:
        return {};
    }
}

bool is_in_word(utf8proc_int32_t letter)
{
    const auto category = utf8proc_category(letter);
    return (category >= UTF8PROC_CATEGORY_LU && category <= UTF8PROC_CATEGORY_LO) ||
           (category >= UTF8PROC_CATEGORY_ND && category <= UTF8PROC_CATEGORY_NO);
}

void plain_sign(char sign, Words& words)
{
    const char folded = ascii[static_cast<std::size_t>(sign)];
    if (folded == 0)
        words.between();
    else if (folded != left_out)
        words.letter({&folded, 1});
}

/// A letter that is not ASCII, taken apart.
void other_sign(utf8proc_int32_t sign, Words& words)
{
    constexpr int options = UTF8PROC_COMPAT | UTF8PROC_DECOMPOSE | UTF8PROC_CASEFOLD | UTF8PROC_STRIPMARK;
    if (sign == 0x2019 || sign == 0x2BC || sign == 0xAD) // apostrophes; the hyphen that nobody sees
        return;
    std::array<utf8proc_int32_t, 32> parts{};
    int last_class = 0;
    const auto count = utf8proc_decompose_char(sign, parts.data(), static_cast<utf8proc_ssize_t>(parts.size()),
                                               static_cast<utf8proc_option_t>(options), &last_class);
    const bool mark =
        utf8proc_category(sign) >= UTF8PROC_CATEGORY_MN && utf8proc_category(sign) <= UTF8PROC_CATEGORY_ME;
    if (mark)
        return;
    if (count <= 0 || count > static_cast<utf8proc_ssize_t>(parts.size()))
        return words.between();
    for (utf8proc_ssize_t i = 0; i < count; ++i) {
        const auto part = parts[static_cast<std::size_t>(i)];
        if (part < 128) {
            plain_sign(static_cast<char>(part), words);
        } else if (const auto typed = plain(part); !typed.empty()) {
            words.letter(typed);
        } else if (is_in_word(part)) {
            std::array<utf8proc_uint8_t, 4> bytes{};
            const auto length = utf8proc_encode_char(part, bytes.data());
            words.letter({reinterpret_cast<const char*>(bytes.data()), static_cast<std::size_t>(length)});
        } else {
            words.between();
        }
    }
}

} // namespace

void fold_into(std::string_view text, std::string& folded)
{
    Words words(folded);
    for (std::size_t i = 0; i < text.size();) {
        if (static_cast<std::uint8_t>(text[i]) < 128) {
            plain_sign(text[i++], words);
            continue;
        }
        utf8proc_int32_t sign = -1;
        const auto length = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + i,
                                             static_cast<utf8proc_ssize_t>(text.size() - i), &sign);
        i += length > 0 ? static_cast<std::size_t>(length) : 1;
        if (length > 0)
            other_sign(sign, words);
        else
            words.between();
    }
}

std::string fold(std::string_view text)
{
    std::string folded;
    fold_into(text, folded);
    return folded;
}

} // namespace catalog
