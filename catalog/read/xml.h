// XML as it comes out of a zip file, piece by piece and in bounded memory: no document types, no entities of one's own,
// no endless depth. The library behind it shows only in xml.cpp.
// Source: W3C, Extensible Markup Language (XML) 1.0; Namespaces in XML 1.0.
#pragma once

#include "catalog/read/zip.h"
#include "core/error.h"

#include <string>
#include <string_view>

namespace catalog {

/// The attributes of one element; lives as long as the call that it is given to.
class XmlAttributes {
public:
    explicit XmlAttributes(const char* const* pairs) : pairs_(pairs) {}
    /// The value of the attribute of this name (xml.h: names); empty without one.
    [[nodiscard]] std::string_view operator[](std::string_view name) const;

private:
    const char* const* pairs_;
};

/// What is done with the parts of a document. Names carry the short word of their namespace: "office:value",
/// "table:table-cell", "text:p", "calcext:value-type", "manifest:encryption-data", "r:id" of relations; none in
/// spreadsheets of Office Open XML and their packages: "row"; "?" stands before names of any other.
/// An exception of these functions comes out of read_xml.
class XmlHandler {
public:
    XmlHandler() = default;
    XmlHandler(const XmlHandler&) = delete;
    XmlHandler& operator=(const XmlHandler&) = delete;
    virtual ~XmlHandler() = default;
    /// An element begins.
    virtual void open(std::string_view name, const XmlAttributes& attributes) = 0;
    /// It ends.
    virtual void close(std::string_view name) = 0;
    /// Letters between marks, in pieces.
    virtual void text(std::string_view /*letters*/) {}
    /// Asked after every element: true ends the reading, which is then a success.
    [[nodiscard]] virtual bool enough() const { return false; }
};

/// Reads a member of a zip file to its end, or until the handler has enough. Errors: those of the reader; TornFile
/// (no well-formed XML, with the line); BadEncoding (a document type); TooLarge (a mark of more than 4 MiB, or elements
/// more than 100 deep).
[[nodiscard]] core::Result<void> read_xml(ZipReader& member, const std::string& source, XmlHandler& handler);

} // namespace catalog
