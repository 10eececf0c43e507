#include "core/figure/money.h"

#include "core/figure/figure.h"

namespace core {

Result<Money> parse_price(std::string_view text)
{
    const auto number = parse_decimal(text.starts_with('$') ? text.substr(1) : text);
    if (number && number->decimals <= 2) {
        const auto price = Money::from_nano(number->nano);
        if (price > Money{} && price <= dearest)
            return price;
    }
    return refuse(Error::Kind::BadValue, text,
                  {"", 0, "", std::string(text), "a price in dollars from 0.01 to 9999.99, such as 3.99"});
}

} // namespace core
