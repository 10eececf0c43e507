#include "kiosk/command/bundle.h"

#include "catalog/bundle/install.h"
#include "catalog/bundle/seal.h"
#include "kiosk/command/bundle_arguments.h"
#include "kiosk/desk/bundle_words.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/languages.h"
#include "ui/words/error_words.h"

#include <ostream>
#include <stdexcept>

namespace kiosk {
namespace {

using ui::TextId;

/// The languages, and the one that was asked for.
class Words {
public:
    explicit Words(const std::string& code)
        : languages_(read_language_files(data_folder())), language_(language_named(code, languages_))
    {
    }
    [[nodiscard]] const ui::Language& in() const { return language_; }

private:
    LanguageFiles languages_;
    const ui::Language& language_;
};

int refused(const core::Error& error, const Words& words, std::ostream& err)
{
    err << "pairstand: " << ui::sentence(error, words.in()) << '\n';
    return 2;
}

std::filesystem::path data_of(const std::string& into)
{
    const auto data = into.empty() ? own_data() : std::filesystem::path(into);
    if (data.empty())
        throw std::runtime_error("this user has no folder of data (HOME is not set); give one with --into FOLDER");
    return data;
}

std::string of_key(const catalog::PublicKey& key, const Words& words)
{
    return words.in().fill(TextId::keys_fingerprint, {{"fingerprint", catalog::fingerprint(key)}});
}

int make_keys(const KeysArguments& asked, const Words& words, std::ostream& out, std::ostream& err)
{
    const auto made = catalog::make_keys(asked.into);
    if (!made)
        return refused(made.error(), words, err);
    const std::filesystem::path folder = asked.into;
    out << words.in().fill(TextId::keys_made, {{"secret", (folder / catalog::secret_key_file).string()},
                                               {"public", (folder / catalog::public_key_file).string()}})
        << '\n'
        << of_key(*made, words) << '\n';
    return 0;
}

int show_key(const KeysArguments& asked, const Words& words, std::ostream& out, std::ostream& err)
{
    if (!asked.key.empty()) {
        const auto key = catalog::read_public_key(asked.key);
        if (!key)
            return refused(key.error(), words, err);
        out << of_key(*key, words) << '\n';
        return 0;
    }
    const auto installed = catalog::read_installed(data_of(asked.into));
    if (!installed)
        return refused(installed.error(), words, err);
    out << (installed->key ? of_key(*installed->key, words) : words.in().text(TextId::keys_none)) << '\n';
    return 0;
}

int forget_key(const KeysArguments& asked, const Words& words, std::ostream& out, std::ostream& err)
{
    if (const auto done = catalog::forget_key(data_of(asked.into)); !done)
        return refused(done.error(), words, err);
    out << words.in().text(TextId::keys_forgotten) << '\n';
    return 0;
}

int put_back(const InstallArguments& asked, const Words& words, std::ostream& out, std::ostream& err)
{
    const auto now = catalog::go_back(data_of(asked.into));
    if (!now)
        return refused(now.error(), words, err);
    out << went_back_words(*now, words.in()) << '\n';
    return 0;
}

} // namespace

int keys(const KeysArguments& asked, std::ostream& out, std::ostream& err)
{
    const Words words(asked.language);
    switch (asked.what) {
    case KeysArguments::What::Make:
        return make_keys(asked, words, out, err);
    case KeysArguments::What::Show:
        return show_key(asked, words, out, err);
    case KeysArguments::What::Forget:
        break;
    }
    return forget_key(asked, words, out, err);
}

int seal(const SealArguments& asked, const std::string& today, std::ostream& out, std::ostream& err)
{
    const Words words(asked.language);
    const auto sealed = catalog::seal(
        {asked.catalog, asked.tour, asked.texts, asked.key, asked.name, asked.maker, today, asked.counter, asked.out});
    if (!sealed)
        return refused(sealed.error(), words, err);
    out << words.in().fill(TextId::seal_done, {{"out", asked.out},
                                               {"bundle", bundle_named(sealed->manifest, words.in())},
                                               {"products", std::to_string(sealed->manifest.products)},
                                               {"bytes", std::to_string(sealed->bytes)}})
        << '\n';
    if (sealed->stayed > 0)
        out << words.in().fill(TextId::seal_stayed, {{"count", std::to_string(sealed->stayed)}}) << '\n';
    out << of_key(sealed->key, words) << '\n';
    return 0;
}

int install(const InstallArguments& asked, std::ostream& out, std::ostream& err)
{
    const Words words(asked.language);
    if (asked.go_back)
        return put_back(asked, words, out, err);
    const auto done = catalog::install({asked.bundle, data_of(asked.into), asked.accept});
    if (!done)
        return refused(done.error(), words, err);
    for (const auto& sentence : install_words(*done, words.in()))
        out << sentence << '\n';
    return 0;
}

} // namespace kiosk
