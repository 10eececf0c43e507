// The commands about bundles: what they say, in both languages, and their exit status.
#include "kiosk/command/arguments.h"
#include "kiosk/command/bundle.h"
#include "kiosk/command/bundle_arguments.h"
#include "kiosk/command/load.h"
#include "tests/catalog/bundle/leader.h"

#include <algorithm>
#include <sstream>

namespace {

struct Run {
    int status;
    std::string out;
    std::string err;
};

Run ended(int status, const std::ostringstream& out, const std::ostringstream& err)
{
    return {status, out.str(), err.str()};
}

/// A leader's folder and a station's, and the commands on them.
struct Desk {
    test::TempFolder folder;
    std::string keys = folder.file("keys");
    std::string shop = folder.file("shop.db");
    std::string data = folder.file("pairstand");

    Desk() { catalog::Store(shop).put(test::products(3)); }

    Run key(kiosk::KeysArguments::What what, const std::string& language = "en") const
    {
        std::ostringstream out;
        std::ostringstream err;
        const bool make = what == kiosk::KeysArguments::What::Make;
        return ended(kiosk::keys({what, make ? keys : data, "", language}, out, err), out, err);
    }
    Run seal(const std::string& name, std::optional<std::uint64_t> counter = std::nullopt,
             const std::string& language = "en") const
    {
        std::ostringstream out;
        std::ostringstream err;
        const kiosk::SealArguments asked{shop, keys, "Winter", "Cedar Hollow", folder.file(name),
                                         {},   {},   counter,  language};
        return ended(kiosk::seal(asked, "2026-11-25", out, err), out, err);
    }
    Run install(const std::string& name, const std::string& accept = {}, const std::string& language = "en") const
    {
        std::ostringstream out;
        std::ostringstream err;
        return ended(kiosk::install({folder.file(name), data, accept, false, language}, out, err), out, err);
    }
    Run go_back(const std::string& language = "en") const
    {
        std::ostringstream out;
        std::ostringstream err;
        return ended(kiosk::install({"", data, "", true, language}, out, err), out, err);
    }
    [[nodiscard]] std::string fingerprint() const
    {
        return catalog::fingerprint(catalog::read_public_key(keys).value());
    }
};

using What = kiosk::KeysArguments::What;

} // namespace

TEST_CASE("bundle commands: from a new key to a bundle in place and back, in words")
{
    const Desk desk;
    const auto made = desk.key(What::Make);
    CHECK(made.status == 0);
    CHECK(made.out == "A new key was made. Keep " + desk.keys +
                          "/pairstand.secret to yourself: whoever has it can seal in your name. " + desk.keys +
                          "/pairstand.public may be seen by all.\nFingerprint of the key, to be read aloud: " +
                          desk.fingerprint() + "\n");
    CHECK(desk.key(What::Make).status == 2);
    CHECK(desk.key(What::Show).out == "This station has not accepted a key yet.\n");
    CHECK(desk.key(What::Show, "es").out == "Esta estación todavía no aceptó ninguna llave.\n");

    const auto sealed = desk.seal("b1");
    CHECK(sealed.status == 0);
    CHECK(sealed.out.starts_with("Sealed into " + desk.folder.file("b1") +
                                 ": “Winter” (number 1), made 2026-11-25 by Cedar Hollow. Products: 3. Bytes: "));
    const auto unknown = desk.install("b1");
    CHECK(unknown.status == 2);
    CHECK(unknown.err == "pairstand: " + desk.folder.file("b1") +
                             ": no key was accepted here yet, so it was not installed; ask the maker for the "
                             "fingerprint of the key, and if it is " +
                             desk.fingerprint() + ", install it with --accept '" + desk.fingerprint() + "'.\n");
    const auto done = desk.install("b1", desk.fingerprint());
    CHECK(done.status == 0);
    CHECK(done.out == "In place now: “Winter” (number 1), made 2026-11-25 by Cedar Hollow. Products: 3.\n");
    CHECK(desk.key(What::Show).out == "Fingerprint of the key, to be read aloud: " + desk.fingerprint() + "\n");
    REQUIRE(desk.seal("b2").status == 0);
    CHECK(desk.install("b2", "", "es").out ==
          "Instalado ahora: “Winter” (número 2), hecho 2026-11-25 por Cedar Hollow. Productos: 3.\n");
    CHECK(desk.go_back().out == "In place again: “Winter” (number 1), made 2026-11-25 by Cedar Hollow.\n");
    CHECK(desk.key(What::Forget).status == 0);
    CHECK(desk.install("b2").status == 2);
}

TEST_CASE("bundle commands: going back to before the first bundle is said plainly")
{
    const Desk desk;
    CHECK(desk.go_back().status == 2);
    REQUIRE(desk.key(What::Make).status == 0);
    REQUIRE(desk.seal("b1").status == 0);
    REQUIRE(desk.install("b1", desk.fingerprint()).status == 0);
    const auto back = desk.go_back("es");
    CHECK(back.status == 0);
    CHECK(back.out ==
          "Ahora no hay ningún conjunto instalado: la estación muestra el catálogo propio del lugar. Donde no "
          "lo hay, sigue con estas etiquetas hasta que se abra de nuevo, y luego muestra la demostración.\n");
}

TEST_CASE("bundle commands: each refusal is one sentence with what, where and what to do, in both languages")
{
    const Desk desk;
    const Desk other;
    for (const auto* each : {&desk, &other})
        REQUIRE(each->key(What::Make).status == 0);
    REQUIRE(desk.seal("in place", 7).status == 0);
    REQUIRE(desk.install("in place", desk.fingerprint()).status == 0);
    REQUIRE(desk.seal("good", 8).status == 0);
    const auto good = test::bytes_of(desk.folder.file("good"));
    auto damaged = good;
    damaged[good.size() - 100] ^= 1;
    desk.folder.write("damaged", damaged);
    desk.folder.write("half", good.substr(0, good.size() / 2));
    desk.folder.write("letter", "Dear pantry");
    REQUIRE(desk.seal("older", 6).status == 0);
    REQUIRE(other.seal("foreign", 9).status == 0);
    desk.folder.write("foreign", test::bytes_of(other.folder.file("foreign")));
    struct Case {
        const char* file;
        const char* says;
        const char* dice;
        const char* todo;
    };
    const Case cases[] = {
        {"damaged", "not as it was sealed (its catalog.db differs)", "no está como se selló", "copy it once more"},
        {"half", "only a part of this bundle was copied", "solo se copió una parte", "copy it once more"},
        {"letter", "this file is no Pairstand bundle", "no es un conjunto", "give the file"},
        {"older", "has the number 6, and number 7 was in place", "tiene el número 6", "--go-back"},
        {"foreign", "sealed with another key", "sellado con otra llave", "ask the maker of your bundles"},
        {"none", "there is no such file", "no existe ese archivo", "check its name"},
        {"keys", "this is a folder", "esto es una carpeta", "name of a file"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.file);
        const auto english = desk.install(c.file);
        CAPTURE(english.err);
        CHECK(english.status == 2);
        CHECK(english.out.empty());
        CHECK(std::ranges::count(english.err, '\n') == 1);
        CHECK(english.err.starts_with("pairstand: " + desk.folder.file(c.file) + ": "));
        CHECK(english.err.find(c.says) != std::string::npos);
        CHECK(english.err.find(c.todo) != std::string::npos);
        const auto spanish = desk.install(c.file, "", "es");
        CAPTURE(spanish.err);
        CHECK(spanish.status == 2);
        CHECK(spanish.err.find(c.dice) != std::string::npos);
        CHECK(spanish.err.ends_with(".\n"));
    }
    CHECK(desk.install("in place").status == 0); // the same one again is no fault
    CHECK(desk.install("good").status == 0);
}

TEST_CASE("bundle commands: a load into the place's own catalog says that a bundle is shown")
{
    const Desk desk;
    REQUIRE(desk.key(What::Make).status == 0);
    REQUIRE(desk.seal("b1").status == 0);
    const auto sheet = desk.folder.write("a.csv", test::good_sheet(1));
    const auto own = desk.data + "/catalog.db";
    const auto load = [&] {
        std::ostringstream out;
        std::ostringstream err;
        kiosk::LoadArguments asked;
        asked.sources = {sheet};
        asked.into = own;
        return ended(kiosk::load(asked, out, err), out, err).out;
    };
    CHECK(load() == "1 product loaded into " + own + ".\n");
    REQUIRE(desk.install("b1", desk.fingerprint()).status == 0);
    CHECK(load().find("The station goes on showing the bundle “Winter”: it shows these labels after 'pairstand install "
                      "--go-back'") != std::string::npos);
}
