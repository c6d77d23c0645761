#include "ground/symmetric.hpp"

#include <cmath>

namespace stringcourse::ground {
namespace {

constexpr double kLeastPivot = 1e-11;

/// The lower triangle L with L L' = matrix.
std::optional<Symmetric> root_of(const Symmetric& matrix) {
  const std::size_t n = matrix.size();
  Symmetric root(n);
  for (std::size_t j = 0; j < n; ++j) {
    double pivot = matrix.at(j, j);
    for (std::size_t k = 0; k < j; ++k) pivot -= root.at(j, k) * root.at(j, k);
    if (!(pivot > kLeastPivot * matrix.at(j, j))) return std::nullopt;
    const double diagonal = std::sqrt(pivot);
    root.at(j, j) = diagonal;
    for (std::size_t i = j + 1; i < n; ++i) {
      double sum = matrix.at(i, j);
      for (std::size_t k = 0; k < j; ++k) sum -= root.at(i, k) * root.at(j, k);
      root.at(i, j) = sum / diagonal;
    }
  }
  return root;
}

/// The inverse of a lower triangle.
Symmetric triangle_inverse(const Symmetric& root) {
  const std::size_t n = root.size();
  Symmetric inverse(n);
  for (std::size_t j = 0; j < n; ++j) {
    inverse.at(j, j) = 1 / root.at(j, j);
    for (std::size_t i = j + 1; i < n; ++i) {
      double sum = 0;
      for (std::size_t k = j; k < i; ++k) sum -= root.at(i, k) * inverse.at(k, j);
      inverse.at(i, j) = sum / root.at(i, i);
    }
  }
  return inverse;
}

}  // namespace

std::optional<Symmetric> inverse_of(const Symmetric& matrix) {
  const auto root = root_of(matrix);
  if (!root) return std::nullopt;
  const Symmetric half = triangle_inverse(*root);
  const std::size_t n = matrix.size();
  Symmetric inverse(n);
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j <= i; ++j) {
      double sum = 0;
      for (std::size_t k = i; k < n; ++k) sum += half.at(k, i) * half.at(k, j);
      inverse.at(i, j) = inverse.at(j, i) = sum;
    }
  }
  return inverse;
}

std::vector<double> product(const Symmetric& matrix, const std::vector<double>& vector) {
  std::vector<double> result(vector.size(), 0.0);
  for (std::size_t i = 0; i < vector.size(); ++i) {
    for (std::size_t j = 0; j < vector.size(); ++j) result[i] += matrix.at(i, j) * vector[j];
  }
  return result;
}

}  // namespace stringcourse::ground
