#pragma once
// Small dense symmetric systems: the normal equations of an adjustment. Doubles, + - x / and sqrt only.
#include <cstddef>
#include <optional>
#include <vector>

namespace stringcourse::ground {

/// A symmetric matrix, kept whole, row by row.
class Symmetric {
 public:
  explicit Symmetric(std::size_t size) : size_(size), values_(size * size, 0.0) {}
  [[nodiscard]] std::size_t size() const { return size_; }
  [[nodiscard]] double at(std::size_t row, std::size_t column) const { return values_[row * size_ + column]; }
  double& at(std::size_t row, std::size_t column) { return values_[row * size_ + column]; }

 private:
  std::size_t size_;
  std::vector<double> values_;
};

/// The inverse of a positive definite matrix (Cholesky); none where a pivot falls below 1e-11 of its own diagonal: then
/// the unknowns are not determinate.
[[nodiscard]] std::optional<Symmetric> inverse_of(const Symmetric& matrix);

/// matrix times vector.
[[nodiscard]] std::vector<double> product(const Symmetric& matrix, const std::vector<double>& vector);

}  // namespace stringcourse::ground
