// Which categories or markets a release has, so that one that was misspelt can be answered with those that are there.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace catalog {

/// Names with how many records have each; letters of either case are the same. A hostile file cannot make it endless.
class NamesThere {
public:
    /// Counts the name of one record; an empty one is none.
    void add(std::string_view name);

    /// Whether a record has it; true as well where that cannot be told, of a name too long or among too many.
    [[nodiscard]] bool may_have(std::string_view name) const;
    /// How many names there are, as far as they were kept.
    [[nodiscard]] std::size_t count() const { return records_.size(); }

    /// At most five names as they are written: first those that the asked-for one may have been meant to be, then those
    /// that most records have.
    [[nodiscard]] std::vector<std::string> like(std::string_view asked) const;

private:
    struct Name {
        std::string written;
        std::size_t records = 0;
    };
    std::unordered_map<std::string, Name> records_; ///< by the name in small letters
};

} // namespace catalog
