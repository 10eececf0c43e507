// Why an input was refused, as a plain value with its place: returned, compared, never thrown.
#pragma once

#include <tl/expected.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>

namespace core {

/// Where in outside data something was found, and what should have stood there. Empty fields mean "does not apply".
struct Place {
    std::string source;   ///< the file as the user named it
    std::size_t row = 0;  ///< 1 is the first row of the file (the header); 0: not about a row
    std::string column;   ///< the column's name, or its number where it has none
    std::string found;    ///< the cell as it stands, cut to a readable length
    std::string expected; ///< what would have been right, in words
    bool operator==(const Place&) const = default;
};

/// Why an input was refused. The sentence that people read is made from it in ui/words/error_words.
struct Error {
    enum class Kind {
        NotDigits,       ///< a code holds something else than the digits 0 to 9
        WrongLength,     ///< a code has not 8, 12, 13 or 14 digits
        WrongCheckDigit, ///< the last digit does not fit the others
        NotAProductCode, ///< a good code that names no product (coupon, in-store number, ...)
        BadValue,        ///< a cell that cannot be read as what its column holds
        MissingValue,    ///< a cell that must not be empty
        MissingColumn,   ///< a column that must be there
        UnknownColumn,   ///< a column that no one knows
        DoubledValue,    ///< something that may stand only once stands twice
        BadRow,          ///< a row with more or fewer cells than the header
        BadEncoding,     ///< bytes that are no text in the encoding found
        TooLarge,        ///< longer or larger than what is taken
        Empty,           ///< nothing to read
        NoSuchFile,      ///< nothing lies there
        IsFolder,        ///< a folder where a file is meant
        NoCatalog,       ///< a file, but none of our catalogs
        NewerCatalog,    ///< a catalog of a later version of this program
        TornCatalog,     ///< a catalog with something missing or changed in it
        TornFile,        ///< a packed file with something missing or changed in it
        NoFoods,         ///< a file of a release without a food in it
        CannotRead,      ///< the file may not be read, or its disk fails; `detail` is the system's word
        NoBundle,        ///< a file, but no bundle
        NewerBundle,     ///< a bundle of a later version of this program
        DamagedBundle,   ///< a bundle that is not as it was sealed; place.found: the part, where it is one
        CutBundle,       ///< a bundle of which only a part was copied
        UnknownKey,      ///< sealed with a first key that nobody accepted yet; place.found: its fingerprint
        OtherKey,        ///< sealed with another key than the fingerprint that was typed; found, expected
        ForeignKey,      ///< sealed with another key than the accepted one; found, expected: their fingerprints
        OlderBundle,     ///< not newer than what was in place; found, expected: the two counters
        NothingBefore,   ///< nothing to go back to
        DamagedRecord,   ///< the record of what is installed is not as it was written
        NoKey,           ///< a file, but no key
        AlreadyThere,    ///< what must not be written over
        NoRoom,          ///< the disk is too full; found, expected: free and needed megabytes
        Busy,            ///< another program is writing there
        CannotWrite,     ///< the file or its disk takes nothing; `detail` is the system's word
    };
    Kind kind;
    std::string detail; ///< for the log; the shopper's sentence lives in ui/words/
    Place place;
    bool operator==(const Error&) const = default;
};

/// A value, or why there is none.
template<class T>
using Result = tl::expected<T, Error>;

/// Refuses an input: `return refuse(Error::Kind::NotDigits, text);`
inline auto refuse(Error::Kind kind, std::string_view detail, Place place = {})
{
    return tl::make_unexpected(Error{kind, std::string(detail), std::move(place)});
}

} // namespace core
