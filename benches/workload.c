// A fixed piece of work, to tell how fast a machine is: numbers go through a heap that does not fit a small cache.
// Compiled natively for the measuring programs, and as a module of its own for the page's.
enum { kNumbers = 1 << 16 };
static unsigned heap[kNumbers];

static void sink(unsigned root, unsigned count) {
  for (;;) {
    unsigned child = 2 * root + 1;
    if (child >= count) return;
    if (child + 1 < count && heap[child + 1] > heap[child]) ++child;
    if (heap[root] >= heap[child]) return;
    const unsigned held = heap[root];
    heap[root] = heap[child], heap[child] = held;
    root = child;
  }
}

// Sorts pseudo-random numbers `rounds` times; gives back a number that depends on all of them.
unsigned workload(unsigned rounds) {
  unsigned state = 2463534242u, all = 0;
  for (unsigned round = 0; round < rounds; ++round) {
    for (unsigned k = 0; k < kNumbers; ++k) {
      state ^= state << 13, state ^= state >> 17, state ^= state << 5;  // SOURCE: Marsaglia, Xorshift RNGs (2003)
      heap[k] = state;
    }
    for (unsigned root = kNumbers / 2; root-- > 0;) sink(root, kNumbers);
    for (unsigned count = kNumbers; count-- > 1;) {
      const unsigned held = heap[0];
      heap[0] = heap[count], heap[count] = held;
      sink(0, count);
    }
    all ^= heap[round % kNumbers] + round;
  }
  return all;
}
