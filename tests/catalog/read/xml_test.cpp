#include "catalog/read/xml.h"
#include "tests/support/zip_maker.h"

#include <doctest/doctest.h>

#include <stdexcept>

using core::Error;

namespace {

/// Writes down what it is told.
class Told final : public catalog::XmlHandler {
public:
    void open(std::string_view name, const catalog::XmlAttributes& attributes) override
    {
        all += "<" + std::string(name);
        for (const auto* attribute : {"office:value", "r", "r:id"})
            if (!attributes[attribute].empty())
                all += " " + std::string(attribute) + "=" + std::string(attributes[attribute]);
        all += ">";
        if (name == "throw")
            throw std::runtime_error("thrown in the middle");
    }
    void close(std::string_view name) override { all += "</" + std::string(name) + ">"; }
    void text(std::string_view letters) override { all += letters; }
    [[nodiscard]] bool enough() const override { return all.size() > most; }
    std::string all;
    std::size_t most = 100'000;
};

core::Result<void> read(const std::string& xml, Told& told)
{
    const auto bytes = test::zip_of({{"a.xml", xml}});
    const auto zip = catalog::ZipFile::of_bytes(bytes, "b.xlsx", {.highest_ratio = 2000});
    auto member = zip->read(zip->members()[0]);
    return catalog::read_xml(*member, "b.xlsx", told);
}

core::Error refused(const std::string& xml)
{
    Told told;
    const auto done = read(xml, told);
    REQUIRE_FALSE(done.has_value());
    CHECK(done.error().place.source == "b.xlsx");
    return done.error();
}

} // namespace

TEST_CASE("xml: names carry the word of their namespace, whatever prefix the file uses")
{
    Told told;
    CHECK(read("<x:row xmlns:x=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" r=\"7\">a&lt;b"
               "<o:p xmlns:o=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\" o:value=\"8\"/>"
               "<q xmlns=\"urn:other\"/></x:row>",
               told));
    CHECK(told.all == "<row r=7>a<b<office:p office:value=8></office:p><?q></?q></row>");
}

TEST_CASE("xml: what is torn, deep, long or has a document type is refused")
{
    CHECK(refused("<a><b></a>").kind == Error::Kind::TornFile);
    CHECK(refused("<a>").kind == Error::Kind::TornFile);
    CHECK(refused("").kind == Error::Kind::TornFile);
    // Entities that name one another, a thousand million times in all: refused with the document type.
    CHECK(refused("<!DOCTYPE a [<!ENTITY b \"&c;&c;\"><!ENTITY c \"x\">]><a>&b;</a>").place.found ==
          "an XML document type");
    CHECK(refused("<!DOCTYPE a SYSTEM \"file:///etc/passwd\"><a/>").kind == Error::Kind::BadEncoding);
    std::string deep;
    for (int i = 0; i < 101; ++i)
        deep += "<a>";
    CHECK(refused(deep).place.found == "XML more than 100 deep");
    CHECK(refused("<a b=\"" + std::string(9U << 20U, 'x') + "\"/>").place.found == "an XML mark of more than 4 MiB");
}

TEST_CASE("xml: a reading ends when the handler has enough, and an exception of it comes out")
{
    Told told;
    told.most = 3;
    CHECK(read("<a><b/><c></never closed", told));
    CHECK(told.all == "<a><b>");
    Told thrown;
    CHECK_THROWS_AS((void)read("<a><throw/></a>", thrown), std::runtime_error);
}
