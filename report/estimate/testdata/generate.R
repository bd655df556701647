# Rscript generate.R > r_expected.csv
# Values of R's own functions, to hold the package's quantiles, paired means and trial sizes against.
# Columns: what was computed, its arguments, R's value.
say <- function(quantity, args, value)
  cat(sprintf("%s,%s,%.15g\n", quantity, paste(args, collapse = ";"), value))
num <- function(...) sapply(c(...), function(v) format(v, digits = 15, scientific = FALSE))
cat("quantity,args,value\n")

for (conf in c(.5, .8, .9, .95, .99, .9995)) {
  say("z", num(conf), qnorm((1 - conf) / 2, lower.tail = FALSE))
  for (df in c(.5, 1, 2, 2.5, 3, 7, 17, 40.25, 300, 5e4, 2e6))
    say("t", num(conf, df), qt((1 - conf) / 2, df, lower.tail = FALSE))
}

# sleep: ten patients, Student (1908), the data set shipped with R
cases <- list(sleep[1:10, "extra"] - sleep[11:20, "extra"], c(.02, .05, -.01, .04, .03), c(-.5, .5))
for (d in cases) for (conf in c(.8, .95)) {
  tt <- t.test(d, conf.level = conf)
  a <- num(conf, round(d, 10))
  say("paired_mean", a, tt$estimate); say("paired_se", a, tt$stderr); say("paired_sd", a, sd(round(d, 10)))
  say("paired_low", a, tt$conf.int[1]); say("paired_high", a, tt$conf.int[2])
}

for (s in c(.03, .05, .08, .12)) for (d in c(.02, .05, .10))
  say("side_by_side", num(s, d), power.t.test(delta = d, sd = s, sig.level = .05, power = .8, type = "paired", strict = TRUE)$n)
