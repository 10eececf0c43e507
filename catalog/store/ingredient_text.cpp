#include "catalog/store/ingredient_text.h"

#include <stdexcept>
#include <zstd.h>

namespace catalog {
namespace {

constexpr int effort = 3;                    // of 22; more saves little on texts this short
constexpr char dictionary_number = 1;        // the first byte of what is packed
constexpr std::size_t longest = 1U << 20U;   // bytes of a list of ingredients; far above any package
constexpr std::size_t not_worth_trying = 24; // shorter texts only grow

struct Free {
    void operator()(ZSTD_CCtx* context) const { ZSTD_freeCCtx(context); }
    void operator()(ZSTD_DCtx* context) const { ZSTD_freeDCtx(context); }
    void operator()(ZSTD_CDict* dictionary) const { ZSTD_freeCDict(dictionary); }
    void operator()(ZSTD_DDict* dictionary) const { ZSTD_freeDDict(dictionary); }
};

template<class Held>
using Handle = std::unique_ptr<Held, Free>;

[[noreturn]] void broken()
{
    throw std::runtime_error("catalog: a row holds no list of ingredients that this program packed");
}

} // namespace

struct IngredientText::Inside {
    Handle<ZSTD_CCtx> packing;
    Handle<ZSTD_CDict> packing_words; // made when something is packed; a station only unpacks
    Handle<ZSTD_DCtx> unpacking;
    Handle<ZSTD_DDict> unpacking_words;

    void prepare_packing()
    {
        if (packing)
            return;
        const auto words = ingredient_dictionary();
        packing.reset(ZSTD_createCCtx());
        packing_words.reset(ZSTD_createCDict(words.data(), words.size(), effort));
        if (!packing || !packing_words)
            throw std::bad_alloc();
    }

    void prepare_unpacking()
    {
        if (unpacking)
            return;
        const auto words = ingredient_dictionary();
        unpacking.reset(ZSTD_createDCtx());
        unpacking_words.reset(ZSTD_createDDict(words.data(), words.size()));
        if (!unpacking || !unpacking_words)
            throw std::bad_alloc();
    }
};

IngredientText::IngredientText() : inside_(std::make_unique<Inside>()) {}
IngredientText::IngredientText(IngredientText&&) noexcept = default;
IngredientText& IngredientText::operator=(IngredientText&&) noexcept = default;
IngredientText::~IngredientText() = default;

std::string IngredientText::packed(std::string_view text)
{
    if (text.size() < not_worth_trying || text.size() > longest)
        return {};
    inside_->prepare_packing();
    std::string bytes(1 + ZSTD_compressBound(text.size()), dictionary_number);
    const std::size_t length = ZSTD_compress_usingCDict(inside_->packing.get(), bytes.data() + 1, bytes.size() - 1,
                                                        text.data(), text.size(), inside_->packing_words.get());
    if (ZSTD_isError(length) != 0U || length + 1 >= text.size())
        return {};
    bytes.resize(length + 1);
    return bytes;
}

std::string IngredientText::unpacked(std::string_view bytes)
{
    if (bytes.empty() || bytes.front() != dictionary_number)
        broken();
    bytes.remove_prefix(1);
    const auto size = ZSTD_getFrameContentSize(bytes.data(), bytes.size());
    if (size == ZSTD_CONTENTSIZE_ERROR || size == ZSTD_CONTENTSIZE_UNKNOWN || size > longest)
        broken();
    inside_->prepare_unpacking();
    std::string text(size, '\0');
    const std::size_t length = ZSTD_decompress_usingDDict(inside_->unpacking.get(), text.data(), text.size(),
                                                          bytes.data(), bytes.size(), inside_->unpacking_words.get());
    if (ZSTD_isError(length) != 0U || length != text.size())
        broken();
    return text;
}

} // namespace catalog
