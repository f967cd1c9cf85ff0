/* The floor: the same work as directly as it goes. Reads time, fork and shock, counts positions to 0.01 mm, takes the
   Savitzky-Golay velocity over 15 samples of order 2 at 1 kHz, counts it to 0.1 mm/s, counts bottoming. One pass, 1 MB. */
#include <math.h>
#include <stdio.h>
#include <string.h>
#define HALF 7
#define POSITIONS 65536
#define VELOCITIES 100001
#define BLOCK 4096
static unsigned positions[2][POSITIONS], velocities[2][VELOCITIES];
static unsigned char buffer[1 << 20];
static double work[2][BLOCK + 2 * HALF];
static const double powers[] = {1, 10, 100, 1e3, 1e4, 1e5, 1e6};
static long rows, bottomed[2];
static int filled, begun, on[2];
static const double limit[2] = {118, 128};

static void block(void) {
  double norm = 0;
  for (int i = 1; i <= HALF; i++) norm += 2.0 * i * i;
  for (int end = 0; end < 2; end++) {
    double *x = work[end], *fresh = x + 2 * HALF;
    for (int i = 0; i < filled; i++) {
      int step = (int)(fresh[i] * 100 + 0.5) + 1000;
      if (step >= 0 && step < POSITIONS) positions[end][step]++;
      if (on[end]) { if (fresh[i] < limit[end] - 5) on[end] = 0; }
      else if (fresh[i] >= limit[end]) { on[end] = 1; bottomed[end]++; }
    }
    for (int i = begun ? 0 : 2 * HALF; i < filled; i++) {
      double sum = 0;
      for (int j = 1; j <= HALF; j++) sum += j * (x[i + HALF + j] - x[i + HALF - j]);
      int step = (int)floor(sum / norm * 1000 * 10 + 1e-5) + VELOCITIES / 2;
      velocities[end][step < 0 ? 0 : step >= VELOCITIES ? VELOCITIES - 1 : step]++;
    }
    memmove(x, x + filled, 2 * HALF * sizeof *x);
  }
  begun = 1;
  filled = 0;
}

int main(int argc, char **argv) {
  FILE *file = argc > 1 ? fopen(argv[1], "rb") : NULL;
  if (!file) return 2;
  size_t kept = 0, got;
  int head = 1;
  while ((got = fread(buffer + kept, 1, sizeof buffer - kept, file)) > 0) {
    size_t total = kept + got, end = total;
    while (end > 0 && buffer[end - 1] != '\n') end--;
    unsigned char *p = buffer, *stop = buffer + end;
    if (head) { while (*p++ != '\n'); head = 0; }
    while (p < stop) {
      for (int field = 0; field < 3; field++) {
        long whole = 0;
        int decimals = 0, negative = *p == '-';
        if (negative) p++;
        while (*p >= '0' && *p <= '9') whole = whole * 10 + *p++ - '0';
        if (*p == '.') { p++; while (*p >= '0' && *p <= '9') { whole = whole * 10 + *p++ - '0'; decimals++; } }
        p++;
        if (field > 0) work[field - 1][2 * HALF + filled] = (negative ? -whole : whole) / powers[decimals];
      }
      rows++;
      if (++filled == BLOCK) block();
    }
    kept = total - end;
    memmove(buffer, buffer + end, kept);
  }
  block();
  printf("{\"rows\": %ld", rows);
  for (int end = 0; end < 2; end++) {
    unsigned long passed = 0, high = 0, all = 0;
    double median = 0;
    for (int step = 0; step < POSITIONS; step++) { passed += positions[end][step]; if (passed * 2 >= (unsigned long)rows) { median = (step - 1000) / 100.0; break; } }
    for (int step = 0; step < VELOCITIES; step++) { all += velocities[end][step]; if (step >= VELOCITIES / 2 + 1500) high += velocities[end][step]; }
    printf(", \"%s\": {\"median\": %.2f, \"high\": %.4f, \"bottomed\": %ld}", end ? "rear" : "front", median, 100.0 * high / all, bottomed[end]);
  }
  printf("}\n");
  return 0;
}
