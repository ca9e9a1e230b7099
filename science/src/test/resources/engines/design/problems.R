# Makes 18 problems of mixture design from a fixed seed: tight bounds about a random mixture, cut by random constraints.
# Rscript problems.R > problems.txt
set.seed(20240611)
models <- c("linear", "quadratic", "special-cubic")
plan <- list(  # components, constraints, blending, process variables, process terms, runs (p + extra)
  list(3, 1, "quadratic", 0, "none", 0), list(3, 2, "special-cubic", 0, "none", 3), list(3, 1, "quadratic", 1, "quadratic", 4),
  list(4, 2, "quadratic", 0, "none", 3), list(4, 1, "special-cubic", 0, "none", 0), list(4, 1, "linear", 2, "quadratic", 5),
  list(4, 2, "quadratic", 1, "crossed", 6), list(5, 3, "quadratic", 0, "none", 1), list(5, 1, "special-cubic", 0, "none", 12),
  list(5, 2, "quadratic", 0, "none", 20), list(6, 4, "quadratic", 0, "none", 4), list(6, 2, "special-cubic", 0, "none", 5),
  list(6, 1, "quadratic", 1, "linear", 5), list(7, 2, "quadratic", 0, "none", 0), list(7, 4, "quadratic", 0, "none", 33),
  list(8, 3, "linear", 2, "linear", 6), list(8, 2, "quadratic", 0, "none", 5), list(8, 4, "quadratic", 0, "none", 41),
  list(8, 1, "quadratic", 0, "none", 0), list(7, 1, "special-cubic", 0, "none", 4))
blend <- function(q, b) q + if (b == "linear") 0 else choose(q, 2) + if (b == "special-cubic") choose(q, 3) else 0
terms <- function(q, b, k, how) {
  p <- blend(q, b)
  if (how == "linear") p + q * k
  else if (how == "quadratic") p + q * k + k * (k + 1) / 2
  else if (how == "crossed") p * (1 + k + choose(k, 2)) else p
}
for (i in seq_along(plan)) {
  one <- plan[[i]]; q <- one[[1]]
  repeat {
    centre <- runif(q, 0.4, 1.6); centre <- centre / sum(centre)
    lower <- pmax(0, round(centre - runif(q, 0.02, 0.12), 2)); upper <- pmin(1, round(centre + runif(q, 0.03, 0.25), 2))
    cuts <- sapply(seq_len(one[[2]]), function(c) {
      a <- round(runif(q, -1, 1), 1); here <- sum(a * centre)
      paste(paste(a, collapse = " "), round(here - 0.04, 3), round(here + 0.05, 3), sep = "|") })
    if (sum(lower) < 0.9 && sum(upper) > 1.1) break
  }
  p <- terms(q, one[[3]], one[[4]], one[[5]])
  cat(paste(sprintf("hard-%02d", i), paste(lower, collapse = " "), paste(upper, collapse = " "), paste(cuts, collapse = ","),
    one[[3]], one[[4]], one[[5]], p + one[[6]], sep = ";"), "\n", sep = "")
}
