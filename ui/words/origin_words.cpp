#include "ui/words/origin_words.h"

namespace ui {
namespace {

TextId text_of(core::Origin::Kind kind)
{
    switch (kind) {
    case core::Origin::Kind::Release:
        return TextId::label_origin_release;
    case core::Origin::Kind::TypedHere:
        return TextId::label_origin_typed;
    case core::Origin::Kind::Sheet:
        break;
    }
    return TextId::label_origin;
}

} // namespace

std::string origin_sentence(const core::Product& product, const Language& language)
{
    return language.fill(text_of(product.origin.kind), {{"date", product.origin.entered_on.text()},
                                                        {"source", product.origin.source},
                                                        {"row", std::to_string(product.origin.row)}});
}

} // namespace ui
