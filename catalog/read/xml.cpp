#include "catalog/read/xml.h"

#include <array>
#include <cstdint>
#include <exception>
#include <expat.h>
#include <memory>
#include <new>
#include <type_traits>

namespace catalog {
namespace {

using core::Error;

constexpr char behind_namespace = '\n'; // no name or address has it
constexpr int deepest = 100;            // no workbook nests a third of that
constexpr std::int64_t longest_mark = 4 << 20;

/// Where the library is, counted in bytes. Its newer releases, Debian 13's fixes among them, have this in 64 bits and
/// warn of the older name; those of Debian 12 have the older one only. Templates, so that only what is there is asked.
template<class Parser>
std::int64_t byte_at(Parser parser)
{
    if constexpr (requires { XML_GetCurrentByteIndex64(parser); })
        return static_cast<std::int64_t>(XML_GetCurrentByteIndex64(parser));
    else
        return static_cast<std::int64_t>(XML_GetCurrentByteIndex(parser));
}

/// The same of the line.
template<class Parser>
std::uint64_t line_at(Parser parser)
{
    if constexpr (requires { XML_GetCurrentLineNumber64(parser); })
        return static_cast<std::uint64_t>(XML_GetCurrentLineNumber64(parser));
    else
        return static_cast<std::uint64_t>(XML_GetCurrentLineNumber(parser));
}

struct Namespace {
    std::string_view address;
    std::string_view word;
};

/// Sources: OASIS, OpenDocument 1.3 part 3, section 3.2.2; ECMA-376 part 1 (both its namespaces), part 2 (packages).
constexpr Namespace namespaces[] = {
    {"urn:oasis:names:tc:opendocument:xmlns:office:1.0", "office:"},
    {"urn:oasis:names:tc:opendocument:xmlns:table:1.0", "table:"},
    {"urn:oasis:names:tc:opendocument:xmlns:text:1.0", "text:"},
    {"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0", "manifest:"},
    {"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0", "calcext:"},
    {"http://schemas.openxmlformats.org/spreadsheetml/2006/main", ""},
    {"http://purl.oclc.org/ooxml/spreadsheetml/main", ""},
    {"http://schemas.openxmlformats.org/package/2006/relationships", ""},
    {"http://schemas.openxmlformats.org/officeDocument/2006/relationships", "r:"},
    {"http://purl.oclc.org/ooxml/officeDocument/relationships", "r:"},
};

/// The library's name, "address\nname", split.
struct Name {
    std::string_view word;
    std::string_view rest;

    explicit Name(std::string_view whole)
    {
        const auto end = whole.find(behind_namespace);
        rest = end == std::string_view::npos ? whole : whole.substr(end + 1);
        if (end == std::string_view::npos)
            return;
        word = "?";
        for (const auto& known : namespaces)
            if (known.address == whole.substr(0, end))
                word = known.word;
    }
    [[nodiscard]] bool is(std::string_view name) const
    {
        return name.size() == word.size() + rest.size() && name.starts_with(word) && name.ends_with(rest);
    }
    [[nodiscard]] std::string text() const { return std::string(word).append(rest); }
};

struct FreeParser {
    void operator()(XML_Parser parser) const { XML_ParserFree(parser); }
};

/// Stands between the library, which is C and takes no exception, and a handler.
class Reading {
public:
    Reading(const std::string& source, XmlHandler& handler)
        : parser_(XML_ParserCreateNS(nullptr, behind_namespace)), source_(source), handler_(handler)
    {
        if (!parser_)
            throw std::bad_alloc();
        XML_SetUserData(parser_.get(), this);
        XML_SetElementHandler(parser_.get(), open, close);
        XML_SetCharacterDataHandler(parser_.get(), text);
        XML_SetStartDoctypeDeclHandler(parser_.get(), doctype);
    }

    core::Result<void> read(ZipReader& member)
    {
        constexpr int block = 64 << 10;
        for (;;) {
            void* const room = XML_GetBuffer(parser_.get(), block);
            if (room == nullptr)
                throw std::bad_alloc();
            const auto length = member.read(static_cast<char*>(room), block);
            if (!length)
                return tl::make_unexpected(length.error());
            const auto status = XML_ParseBuffer(parser_.get(), static_cast<int>(*length), *length == 0 ? 1 : 0);
            if (thrown_)
                std::rethrow_exception(thrown_);
            if (status != XML_STATUS_OK)
                return ended();
            // A mark that does not end is kept whole by the library: here is where it would grow without end.
            if (static_cast<std::int64_t>(member.done()) - byte_at(parser_.get()) > longest_mark)
                return refuse(Error::Kind::TooLarge, "an XML mark of more than 4 MiB", "shorter ones");
            if (*length == 0)
                return {};
        }
    }

private:
    core::Result<void> refuse(Error::Kind kind, std::string found, std::string expected) const
    {
        return tl::make_unexpected(
            Error{kind, "xml", core::Place{source_, 0, "", std::move(found), std::move(expected)}});
    }

    /// Why the library stopped.
    [[nodiscard]] core::Result<void> ended() const
    {
        switch (stop_) {
        case Stop::Enough:
            return {};
        case Stop::Doctype:
            return refuse(Error::Kind::BadEncoding, "an XML document type", "a workbook, which has none");
        case Stop::Depth:
            return refuse(Error::Kind::TooLarge, "XML more than 100 deep", "a workbook, which never is");
        case Stop::None:
            break;
        }
        if (XML_GetErrorCode(parser_.get()) == XML_ERROR_NO_MEMORY)
            throw std::bad_alloc();
        return tl::make_unexpected(Error{Error::Kind::TornFile,
                                         std::string(XML_ErrorString(XML_GetErrorCode(parser_.get()))) + " in line " +
                                             std::to_string(line_at(parser_.get())),
                                         core::Place{source_, 0, "", "", ""}});
    }

    enum class Stop { None, Enough, Doctype, Depth };

    void stop(Stop why)
    {
        if (stop_ == Stop::None)
            stop_ = why;
        XML_StopParser(parser_.get(), XML_FALSE);
    }

    /// Calls the handler; an exception ends the reading and is thrown again outside of the library.
    template<class Call>
    void call(Call call) noexcept
    {
        if (stop_ != Stop::None || thrown_)
            return;
        try {
            call();
            if (handler_.enough())
                stop(Stop::Enough);
        } catch (...) {
            thrown_ = std::current_exception();
            XML_StopParser(parser_.get(), XML_FALSE);
        }
    }

    static void open(void* self, const char* name, const char** attributes)
    {
        auto& reading = *static_cast<Reading*>(self);
        if (++reading.depth_ > deepest)
            return reading.stop(Stop::Depth);
        reading.call([&] { reading.handler_.open(Name(name).text(), XmlAttributes(attributes)); });
    }
    static void close(void* self, const char* name)
    {
        auto& reading = *static_cast<Reading*>(self);
        --reading.depth_;
        reading.call([&] { reading.handler_.close(Name(name).text()); });
    }
    static void text(void* self, const char* letters, int length)
    {
        auto& reading = *static_cast<Reading*>(self);
        reading.call([&] { reading.handler_.text({letters, static_cast<std::size_t>(length)}); });
    }
    static void doctype(void* self, const char*, const char*, const char*, int)
    {
        static_cast<Reading*>(self)->stop(Stop::Doctype);
    }

    std::unique_ptr<std::remove_pointer_t<XML_Parser>, FreeParser> parser_;
    const std::string& source_;
    XmlHandler& handler_;
    std::exception_ptr thrown_;
    Stop stop_ = Stop::None;
    int depth_ = 0;
};

} // namespace

std::string_view XmlAttributes::operator[](std::string_view name) const
{
    for (const auto* const* pair = pairs_; *pair != nullptr; pair += 2)
        if (Name(*pair).is(name))
            return pair[1];
    return {};
}

core::Result<void> read_xml(ZipReader& member, const std::string& source, XmlHandler& handler)
{
    return Reading(source, handler).read(member);
}

} // namespace catalog
