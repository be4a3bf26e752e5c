/*
 * The formulas in C, written from their sources and not from the Go: what a
 * programmer with a compiler and the papers would have. GSL is there for its
 * root solvers.
 *
 *	kernels answers   a grid of results, one a line
 *	kernels times     name and nanoseconds a call, the least of several runs
 */
#include <gsl/gsl_errno.h>
#include <gsl/gsl_roots.h>
#include <math.h>
#include <stdio.h>
#include <string.h>
#include <time.h>

/* Kell, J. Chem. Eng. Data 20 (1975) 97-105. */
static double kell(double t)
{
	return (999.83952 + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))))) /
	       (1 + 16.887236e-3 * t);
}

/* ICUMSA SPS-4: row k multiplies ((t-20)/100)^k, column i multiplies w^(i+1). */
static const double icumsa[5][6] = {
	{385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890},
	{-46.2720, -7.1720, 1.1597, 5.1126, 17.5254, 0},
	{59.7712, 7.2491, 12.3630, -35.4791, 0, 0},
	{-47.2207, -21.6977, 27.6301, 0, 0, 0},
	{18.3184, 12.3081, 0, 0, 0, 0},
};

/* The polynomial in w at one temperature. */
static void at(double t, double a[6])
{
	double u = (t - 20) / 100;
	a[0] = icumsa[0][0] + u * (icumsa[1][0] + u * (icumsa[2][0] + u * (icumsa[3][0] + u * icumsa[4][0])));
	a[1] = icumsa[0][1] + u * (icumsa[1][1] + u * (icumsa[2][1] + u * (icumsa[3][1] + u * icumsa[4][1])));
	a[2] = icumsa[0][2] + u * (icumsa[1][2] + u * (icumsa[2][2] + u * icumsa[3][2]));
	a[3] = icumsa[0][3] + u * (icumsa[1][3] + u * icumsa[2][3]);
	a[4] = icumsa[0][4] + u * icumsa[1][4];
	a[5] = icumsa[0][5];
}

static double sugar(const double a[6], double w)
{
	return w * (a[0] + w * (a[1] + w * (a[2] + w * (a[3] + w * (a[4] + w * a[5])))));
}

static double sugar_slope(const double a[6], double w)
{
	return a[0] + w * (2 * a[1] + w * (3 * a[2] + w * (4 * a[3] + w * (5 * a[4] + w * 6 * a[5]))));
}

static __attribute__((noinline)) double solution(double brix, double t)
{
	double a[6];
	at(t, a);
	return kell(t) + sugar(a, brix / 100);
}

/* Newton by hand, from the 4.7 kg/m3 that a percent is worth in syrup. */
static __attribute__((noinline)) double brix_of(double density, double t)
{
	double a[6], excess = density - kell(t), w = excess / 470;
	at(t, a);
	for (int i = 0; i < 50; i++) {
		double step = (sugar(a, w) - excess) / sugar_slope(a, w);
		w -= step;
		if (fabs(step) < 1e-9) /* squared, it is below the rounding */
			break;
	}
	return 100 * w;
}

/* A glass stem graduated at t0 in a cup at t: density(reading, t0) = density(b, t)(1 + g (t - t0)). */
static __attribute__((noinline)) double hydrometer(double reading, double t, double t0)
{
	return brix_of(solution(reading, t0) / (1 + 25e-6 * (t - t0)), t);
}

static __attribute__((noinline)) double index_of(double brix)
{
	double w = brix / 100;
	return 1.33299 + w * (0.1426967 + w * (0.05509664 + w * (0.01107236 + w * (0.01448767 - w * 0.01007924))));
}

/* IAPWS R7-97(2012), region 4, eqs. 30 and 31, Table 34. */
static const double n[11] = {0,
	0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
	0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3};

static __attribute__((noinline)) double saturation(double kPa)
{
	double b = sqrt(sqrt(kPa / 1000));
	double e = b * b + n[3] * b + n[6];
	double f = n[1] * b * b + n[4] * b + n[7];
	double g = n[2] * b * b + n[5] * b + n[8];
	double d = 2 * g / (-f - sqrt(f * f - 4 * e * g));
	return (n[10] + d - sqrt((n[10] + d) * (n[10] + d) - 4 * (n[9] + n[10] * d))) / 2;
}

/* ln of the vapor pressure in kPa at k kelvin, and its slope. */
static double log_vapor(double k, double *slope)
{
	double x = k + n[9] / (k - n[10]), dx = 1 - n[9] / ((k - n[10]) * (k - n[10]));
	double a = x * x + n[1] * x + n[2], da = 2 * x + n[1];
	double b = n[3] * x * x + n[4] * x + n[5], db = 2 * n[3] * x + n[4];
	double c = n[6] * x * x + n[7] * x + n[8], dc = 2 * n[6] * x + n[7];
	double d = sqrt(b * b - 4 * a * c), dd = (b * db - 2 * (da * c + a * dc)) / d;
	double r = 2 * c / (d - b), dr = (2 * dc - r * (dd - db)) / (d - b);
	*slope = 4 * dr / r * dx;
	return 4 * log(r) + log(1000);
}

static __attribute__((noinline)) double vapor(double k)
{
	double slope;
	return exp(log_vapor(k, &slope));
}

/*
 * Boiling: water activity (Starzak and Peacock, Zuckerindustrie 122 (1997)
 * 380-387) times vapor pressure is the pressure.
 */
struct boiling { double x, log_kPa; };

static double boiling(double k, const struct boiling *s, double *slope)
{
	double x = s->x, by, g = -17638 / 8.314462618 * x * x * (1 - 1.0038 * x - 0.24653 * x * x);
	double y = log1p(-x) + g / k + log_vapor(k, &by) - s->log_kPa;
	*slope = by - g / (k * k);
	return y;
}

static struct boiling mixture(double brix, double kPa)
{
	double moles = brix / 342.3;
	struct boiling s = {moles / (moles + (100 - brix) / 18.02), log(kPa)};
	return s;
}

static __attribute__((noinline)) double rise(double brix, double kPa)
{
	struct boiling s = mixture(brix, kPa);
	double k0 = saturation(kPa), k = k0;
	for (int i = 0; i < 50; i++) {
		double slope, step = boiling(k, &s, &slope) / slope;
		k -= step;
		if (fabs(step) < 1e-5)
			break;
	}
	return k - k0;
}

/* Brix that boils by so much above water: Newton in the mole fraction. */
static __attribute__((noinline)) double brix_of_rise(double rise, double kPa)
{
	double k = saturation(kPa) + rise, q = -17638 / (8.314462618 * k);
	double want = log(kPa / vapor(k)), x = -want / 2;
	for (int i = 0; i < 50; i++) {
		double y = log1p(-x) + q * x * x * (1 - 1.0038 * x - 0.24653 * x * x) - want;
		double step = y / (-1 / (1 - x) + q * x * (2 - 3 * 1.0038 * x - 4 * 0.24653 * x * x));
		x -= step;
		if (fabs(step) < 1e-9)
			break;
	}
	double mass = x / (1 - x) * 342.3 / 18.02;
	return 100 * mass / (mass + 1);
}

/* The same two roots with GSL: its polished Newton and its Brent. */
struct excess { double a[6], d; };
static double excess_f(double w, void *p) { struct excess *e = p; return sugar(e->a, w) - e->d; }
static double excess_df(double w, void *p) { struct excess *e = p; return sugar_slope(e->a, w); }
static void excess_fdf(double w, void *p, double *f, double *df) { *f = excess_f(w, p); *df = excess_df(w, p); }
static double boiling_f(double k, void *p) { double df; return boiling(k, p, &df); }
static double boiling_df(double k, void *p) { double df; boiling(k, p, &df); return df; }
static void boiling_fdf(double k, void *p, double *f, double *df) { *f = boiling(k, p, df); }

static gsl_root_fdfsolver *newton;
static gsl_root_fsolver *brent;

static double by_newton(gsl_function_fdf *f, double start, double tol)
{
	double x = start, last;
	gsl_root_fdfsolver_set(newton, f, start);
	do {
		last = x;
		gsl_root_fdfsolver_iterate(newton);
		x = gsl_root_fdfsolver_root(newton);
	} while (gsl_root_test_delta(x, last, tol, 0) == GSL_CONTINUE);
	return x;
}

static double by_brent(gsl_function *f, double low, double high, double tol)
{
	gsl_root_fsolver_set(brent, f, low, high);
	do
		gsl_root_fsolver_iterate(brent);
	while (gsl_root_test_interval(gsl_root_fsolver_x_lower(brent), gsl_root_fsolver_x_upper(brent), tol, 0) == GSL_CONTINUE);
	return gsl_root_fsolver_root(brent);
}

static double gsl_brix_of(double density, double t, int polished)
{
	struct excess e;
	at(t, e.a);
	e.d = density - kell(t);
	gsl_function_fdf fdf = {excess_f, excess_df, excess_fdf, &e};
	gsl_function f = {excess_f, &e};
	return 100 * (polished ? by_newton(&fdf, e.d / 470, 1e-9) : by_brent(&f, -0.02, 0.9, 1e-14));
}

static double gsl_rise(double brix, double kPa, int polished)
{
	struct boiling s = mixture(brix, kPa);
	double k = saturation(kPa);
	gsl_function_fdf fdf = {boiling_f, boiling_df, boiling_fdf, &s};
	gsl_function f = {boiling_f, &s};
	return (polished ? by_newton(&fdf, k, 1e-5) : by_brent(&f, k - 1, k + 60, 1e-11)) - k;
}

static void answers(void)
{
	for (int c = 0; c <= 110; c += 5)
		for (int b = 0; b <= 80; b += 5) {
			double d = solution(b, c);
			printf("solution %.17g\nbrix_of %.17g\n", d, brix_of(d + 0.5, c));
			printf("gsl_newton %.17g\ngsl_brent %.17g\n", gsl_brix_of(d + 0.5, c, 1), gsl_brix_of(d + 0.5, c, 0));
			printf("hydrometer %.17g\n", hydrometer(b, 20 + c / 5, 20));
		}
	for (int b = 0; b <= 85; b++)
		printf("index %.17g\n", index_of(b));
	for (int kPa = 20; kPa <= 120; kPa += 5) {
		double k = saturation(kPa);
		printf("saturation %.17g\nvapor %.17g\n", k, vapor(k));
		for (int b = 5; b <= 90; b += 5) {
			double r = rise(b, kPa);
			printf("rise %.17g\nbrix_of_rise %.17g\n", k + r, brix_of_rise(r, kPa));
			printf("gsl_rise_newton %.17g\ngsl_rise_brent %.17g\n", k + gsl_rise(b, kPa, 1), k + gsl_rise(b, kPa, 0));
		}
	}
}

/* Inputs that the compiler cannot know. */
static volatile double syrup = 66.9, reading = 60, cup = 82.22222222222223, graduated = 15.555555555555555, weight = 1290,
		       kPa = 98, boils = 372.2, above = 4.2, sink;

static double now(void)
{
	struct timespec t;
	clock_gettime(CLOCK_MONOTONIC, &t);
	return t.tv_sec * 1e9 + t.tv_nsec;
}

#define TIME(name, calls, expression)                                  \
	do {                                                           \
		double least = INFINITY;                               \
		for (int run = 0; run < 300; run++) {                   \
			double start = now();                          \
			for (int i = 0; i < (calls); i++)              \
				sink = (expression);                   \
			least = fmin(least, (now() - start) / (calls)); \
		}                                                      \
		printf("%s %.3f\n", name, least);                      \
	} while (0)

static void times(void)
{
	TIME("solution", 15000, solution(syrup, cup));
	TIME("index", 15000, index_of(syrup));
	TIME("saturation", 5000, saturation(kPa));
	TIME("vapor", 5000, vapor(boils));
	TIME("brix_of", 5000, brix_of(weight, cup));
	TIME("hydrometer", 5000, hydrometer(reading, cup, graduated));
	TIME("rise", 1500, rise(syrup, kPa));
	TIME("brix_of_rise", 1500, brix_of_rise(above, kPa));
	TIME("gsl_newton", 1500, gsl_brix_of(weight, cup, 1));
	TIME("gsl_brent", 1500, gsl_brix_of(weight, cup, 0));
	TIME("gsl_rise_newton", 500, gsl_rise(syrup, kPa, 1));
	TIME("gsl_rise_brent", 500, gsl_rise(syrup, kPa, 0));
}

int main(int argc, char **argv)
{
	newton = gsl_root_fdfsolver_alloc(gsl_root_fdfsolver_newton);
	brent = gsl_root_fsolver_alloc(gsl_root_fsolver_brent);
	if (argc == 2 && strcmp(argv[1], "answers") == 0)
		answers();
	else if (argc == 2 && strcmp(argv[1], "times") == 0)
		times();
	else
		return 2;
	gsl_root_fdfsolver_free(newton);
	gsl_root_fsolver_free(brent);
	return 0;
}
