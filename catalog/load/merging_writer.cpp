#include "catalog/load/merging_writer.h"

#include "catalog/load/merge.h"

#include <stdexcept>

namespace catalog {
namespace {

constexpr std::size_t batch_size = 256;
constexpr std::size_t batches_waiting = 8;

} // namespace

MergingWriter::MergingWriter(const std::filesystem::path& aside, std::optional<Store> old, ReleaseReport& report)
    : line_(batches_waiting), aside_(aside), writer_(aside), old_(std::move(old)),
      audit_(Found::most_samples, old_ ? old_->approvals() : Approvals{}), report_(&report),
      thread_([this] { write(); })
{
}

MergingWriter::~MergingWriter()
{
    stop();
}

void MergingWriter::stop()
{
    line_.giver_leaves();
    if (thread_.joinable())
        thread_.join();
}

void MergingWriter::add(core::Product product)
{
    auto doubts = core::audit(product);
    batch_.push_back({std::move(product), std::move(doubts)});
    if (batch_.size() < batch_size)
        return;
    line_.give(std::move(batch_));
    batch_ = {};
    batch_.reserve(batch_size);
}

void MergingWriter::finish()
{
    if (!batch_.empty())
        line_.give(std::move(batch_));
    stop();
    if (broken_)
        std::rethrow_exception(broken_);
    take_old_below(nullptr);
    if (old_)
        writer_.add(old_->approvals());
    writer_.finish();
    const auto written = Store::open(aside_, Store::Mode::ReadOnly);
    if (!written)
        throw std::runtime_error(written.error().detail);
    report_->audit = audit_.finish([&](const core::Gtin& gtin) { return written->find(gtin); });
}

/// Every label of the new catalog is looked through, wherever it comes from.
void MergingWriter::put_old()
{
    audit_.look(*next_old_);
    writer_.add(*next_old_);
    ++report_->kept;
}

void MergingWriter::put(const Audited& made)
{
    audit_.take(made.product, made.doubts);
    writer_.add(made.product);
    ++report_->taken;
}

void MergingWriter::write()
{
    try {
        if (old_)
            next_old_ = old_->next_after(nullptr);
        while (const auto batch = line_.take())
            merge(*batch);
    } catch (...) {
        broken_ = std::current_exception();
        line_.taker_leaves();
    }
}

/// Products of the old catalog that the release does not have; with nullptr all that are left.
void MergingWriter::take_old_below(const core::Gtin* number)
{
    while (next_old_ && (number == nullptr || next_old_->gtin < *number)) {
        put_old();
        next_old_ = old_->next_after(&next_old_->gtin);
    }
}

void MergingWriter::merge(const Batch& batch)
{
    for (const auto& made : batch) {
        const auto& product = made.product;
        take_old_below(&product.gtin);
        const bool known = next_old_ && next_old_->gtin == product.gtin;
        if (known && stands_over_release(*next_old_)) {
            if (auto found = differences(next_old_->label, product.label); !found.empty())
                report_->note_own_kept({product.gtin, next_old_->name, std::move(found)});
            put_old();
        } else {
            put(made);
            report_->replaced += known ? 1U : 0U;
        }
        if (known)
            next_old_ = old_->next_after(&product.gtin);
    }
}

} // namespace catalog
