#include "core/label/label.h"

namespace core {

NetQuantity parse_net_quantity(std::string_view printed)
{
    NetQuantity net{std::string(printed), std::nullopt};
    std::string_view metric = printed;
    if (const auto open = printed.rfind('('); open != std::string_view::npos) {
        const auto close = printed.find(')', open);
        metric = printed.substr(open + 1, close == std::string_view::npos ? close : close - open - 1);
    }
    if (const auto measure = parse_measure(metric))
        net.metric = *measure;
    return net;
}

} // namespace core
