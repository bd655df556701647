# Rscript corrected.R > binom_corrected.csv
# Wilson's interval with continuity correction as R's prop.test has it; beside it what was printed elsewhere.
cases <- data.frame(
  case = c("newcombe_a", "newcombe_b", "newcombe_c", "newcombe_d", "r_bug_2794", "r_help_2007", "tray_128", "tray_72_all", "few"),
  x = c(81, 15, 0, 1, 6, 340, 117, 72, 3), n = c(263, 148, 20, 29, 52, 400, 128, 72, 7),
  low = c("0.2535", "0.0598", "0.0000", "0.0018", "0.04778925", "0.8103309", "", "", ""),
  high = c("0.3682", "0.1644", "0.2005", "0.1963", "0.24129372", "0.8827749", "", "", ""),
  digits = c(4, 4, 4, 4, 8, 7, "", "", ""))
cat("case,x,n,conf,low,high,printed_low,printed_high,digits\n")
for (conf in c(.95, .8)) for (i in seq_len(nrow(cases))) with(cases[i, ], {
  ci <- suppressWarnings(prop.test(x, n, conf.level = conf)$conf.int)
  if (conf != .95) low <- high <- digits <- ""
  cat(sprintf("%s,%g,%g,%g,%.15g,%.15g,%s,%s,%s\n", case, x, n, conf, ci[1], ci[2], low, high, digits))
})
