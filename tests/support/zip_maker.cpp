#include "tests/support/zip_maker.h"

#include <cstdint>
#include <memory>
#include <stdexcept>
#include <zip.h>

namespace test {
namespace {

void must(bool good)
{
    if (!good)
        throw std::runtime_error("the zip file for a test could not be made");
}

struct Free {
    void operator()(zip_source_t* source) const { zip_source_free(source); }
};

} // namespace

std::string zip_of(const std::vector<Packed>& files, const char* password)
{
    const std::unique_ptr<zip_source_t, Free> made(zip_source_buffer_create(nullptr, 0, 0, nullptr));
    must(made != nullptr);
    zip_source_keep(made.get());
    auto* zip = zip_open_from_source(made.get(), ZIP_TRUNCATE, nullptr);
    must(zip != nullptr);
    for (const auto& file : files) {
        auto* content = zip_source_buffer(zip, file.content.data(), file.content.size(), 0);
        must(content != nullptr);
        const auto place = zip_file_add(zip, std::string(file.name).c_str(), content, ZIP_FL_ENC_UTF_8);
        must(place >= 0);
        if (password != nullptr)
            must(zip_file_set_encryption(zip, static_cast<zip_uint64_t>(place), ZIP_EM_AES_256, password) == 0);
    }
    must(zip_close(zip) == 0);
    zip_stat_t stat;
    must(zip_source_stat(made.get(), &stat) == 0 && zip_source_open(made.get()) == 0);
    std::string bytes(stat.size, '\0');
    must(zip_source_read(made.get(), bytes.data(), bytes.size()) == static_cast<zip_int64_t>(bytes.size()));
    zip_source_close(made.get());
    return bytes;
}

} // namespace test
