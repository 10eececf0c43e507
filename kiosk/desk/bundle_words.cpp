#include "kiosk/desk/bundle_words.h"

namespace kiosk {

using ui::TextId;

std::string bundle_named(const catalog::Manifest& manifest, const ui::Language& language)
{
    return language.fill(TextId::bundle_named, {{"name", manifest.name},
                                                {"counter", std::to_string(manifest.counter)},
                                                {"made", manifest.made},
                                                {"maker", manifest.maker}});
}

std::vector<std::string> install_words(const catalog::Installing& done, const ui::Language& language)
{
    std::vector<std::string> words{
        language.fill(TextId::install_done, {{"bundle", bundle_named(done.manifest, language)},
                                             {"products", std::to_string(done.manifest.products)}})};
    if (done.came_along > 0)
        words.push_back(language.fill(TextId::install_came_along, {{"count", std::to_string(done.came_along)}}));
    return words;
}

std::string went_back_words(const std::optional<catalog::Manifest>& now, const ui::Language& language)
{
    return now ? language.fill(TextId::install_again, {{"bundle", bundle_named(*now, language)}})
               : language.text(TextId::install_own_again);
}

} // namespace kiosk
