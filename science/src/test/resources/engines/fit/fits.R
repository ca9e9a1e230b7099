# Linear models of mixture data as R fits them: coefficients, errors, lack of fit, leverages, predicted R2, term selection; and
# curves of flow and salt by nls. Rscript fits.R > fits.txt   (R 4.2.2, no packages)
options(digits = 15)
show <- function(name, x) cat(name, formatC(x, digits = 14, format = "g"), "\n")
judge <- function(name, y, X, block = NULL) {
  d <- data.frame(X); d$y <- y
  fit <- lm(y ~ . - 1, d)
  s <- summary(fit)$coefficients
  show(paste0(name, ".estimates"), s[, 1]); show(paste0(name, ".errors"), s[, 2]); show(paste0(name, ".t"), s[, 3]); show(paste0(name, ".p"), s[, 4])
  h <- hatvalues(fit); e <- residuals(fit); total <- sum((y - mean(y))^2)
  show(paste0(name, ".leverages"), h); show(paste0(name, ".studentised"), rstudent(fit))
  show(paste0(name, ".press"), sum((e / (1 - h))^2)); show(paste0(name, ".predicted"), 1 - sum((e / (1 - h))^2) / total)
  show(paste0(name, ".sse.r2.s"), c(sum(e^2), 1 - sum(e^2) / total, summary(fit)$sigma))
  key <- apply(X, 1, function(r) paste(signif(r, 10), collapse = " "))
  if (anyDuplicated(key)) {
    pure <- lm(y ~ factor(key)); a <- anova(fit, pure)
    show(paste0(name, ".lack"), c(a$`Sum of Sq`[2], a$Df[2], a$F[2], a$`Pr(>F)`[2], deviance(pure), df.residual(pure)))
  }
  k <- length(coef(fit)) + 1; n <- length(y)
  show(paste0(name, ".aicc"), AIC(fit) - n * (log(2 * pi) + 1) + 2 * k * (k + 1) / (n - k - 1))
  invisible(fit)
}
backward <- function(name, y, X, fixed) { # the least significant term goes as long as its p is above 0.1 and no larger term holds it
  parts <- strsplit(colnames(X), ".", fixed = TRUE)
  keep <- seq_len(ncol(X))
  repeat {
    p <- summary(lm(y ~ . - 1, data.frame(X[, keep, drop = FALSE])))$coefficients[, 4]
    free <- sapply(keep, function(k) !(k %in% fixed) &&
      !any(sapply(setdiff(keep, k), function(o) all(parts[[k]] %in% parts[[o]]))))
    p[!free] <- -1
    if (max(p) <= 0.1) break
    keep <- keep[-which.max(p)]
  }
  cat(paste0(name, ".kept"), keep, "\n")
}
scheffe <- function(x, cubic = FALSE) {
  X <- cbind(x1 = x[, 1], x2 = x[, 2], x3 = x[, 3], x1.x2 = x[, 1] * x[, 2], x1.x3 = x[, 1] * x[, 3], x2.x3 = x[, 2] * x[, 3])
  if (cubic) cbind(X, x1.x2.x3 = x[, 1] * x[, 2] * x[, 3]) else X
}
gasoline <- as.matrix(read.csv("gasoline.csv"))
for (cubic in c(FALSE, TRUE)) {
  X <- scheffe(gasoline[, 1:3], cubic); name <- if (cubic) "gasoline.cubic" else "gasoline.quadratic"
  judge(name, gasoline[, 4], X); backward(name, gasoline[, 4], X, 1:3)
}

# A mixture with one process variable, its square, and its products with the blending terms: invented figures from a seed.
set.seed(7)
if (!file.exists("process.csv")) {
  mix <- rbind(diag(3), c(.5, .5, 0), c(.5, 0, .5), c(0, .5, .5), c(1, 1, 1) / 3)
  d <- do.call(rbind, lapply(c(-1, 0, 1), function(w) cbind(mix, w)))
  d <- rbind(d, d[c(1, 7, 11, 14, 18), ])
  y <- 12 * d[, 1] + 7 * d[, 2] + 9 * d[, 3] + 14 * d[, 1] * d[, 2] - 6 * d[, 2] * d[, 3] + d[, 4] * (2 * d[, 1] - d[, 3]) +
    1.5 * d[, 4]^2 + 5 * d[, 4] * d[, 1] * d[, 2] + rnorm(nrow(d), 0, 0.4)
  write.csv(data.frame(x1 = d[, 1], x2 = d[, 2], x3 = d[, 3], w = d[, 4], y = round(y, 2)), "process.csv", row.names = FALSE)
}
d <- as.matrix(read.csv("process.csv")); S <- scheffe(d[, 1:3]); w <- d[, 4]
linear <- cbind(S, x1.w = d[, 1] * w, x2.w = d[, 2] * w, x3.w = d[, 3] * w)
judge("process.linear", d[, 5], linear)
judge("process.quadratic", d[, 5], cbind(linear, w.w = w^2))
crossed <- S * w; colnames(crossed) <- paste0(colnames(S), ".w")
judge("process.crossed", d[, 5], cbind(S, crossed))
backward("process.crossed", d[, 5], cbind(S, crossed), 1:3)

# Curves: invented readings from a seed, fitted by nls; flow on the logarithm of the viscosity.
if (!file.exists("flow.csv")) {
  g <- signif(10^seq(-2, 3, length.out = 14), 3)
  noise <- function() exp(rnorm(length(g), 0, 0.03))
  write.csv(data.frame(g = g, power = signif(12 * g^(0.4 - 1) * noise(), 4),
    carreau = signif((0.05 + 29.95 * (1 + (2 * g)^2)^((0.3 - 1) / 2)) * noise(), 4),
    herschel = signif((15 / g + 3 * g^(0.5 - 1)) * noise(), 4)), "flow.csv", row.names = FALSE)
  x <- seq(0.6, 4.2, by = 0.4)
  write.csv(data.frame(x = x, parabola = round(8000 * (1 - ((x - 2.6) / 2.9)^2) + rnorm(length(x), 0, 120)),
    bell = round(8000 * exp(-0.5 * ((x - 2.6) / 0.9)^2) + rnorm(length(x), 0, 120)),
    skewed = round(8000 * exp(-0.5 * (log(x / 2.2) / 0.5)^2) + rnorm(length(x), 0, 120))), "salt.csv", row.names = FALSE)
}
curve <- function(name, fit, plain = identity) {
  show(paste0(name, ".parameters"), plain(coef(fit))); show(paste0(name, ".sse"), deviance(fit))
  show(paste0(name, ".errors"), summary(fit)$coefficients[, 2])
}
tight <- nls.control(maxiter = 500, tol = 1e-8, minFactor = 1e-15, scaleOffset = 1e-6, warnOnly = TRUE)
flow <- read.csv("flow.csv"); salt <- read.csv("salt.csv")
logs <- function(p) c(exp(p[-length(p)]), p[length(p)])
curve("flow.power", nls(log(power) ~ k + (n - 1) * log(g), flow, start = c(k = 2, n = 0.5), control = tight), logs)
curve("flow.carreau", nls(log(carreau) ~ log(exp(i) + (exp(z) - exp(i)) * (1 + (exp(l) * g)^2)^((n - 1) / 2)), flow,
  start = c(z = log(30), i = log(0.05), l = log(2), n = 0.3), control = tight), logs)
curve("flow.herschel", nls(log(herschel) ~ log(exp(t) / g + exp(k) * g^(n - 1)), flow, start = c(t = log(15), k = log(3), n = 0.5),
  control = tight), logs)
curve("salt.parabola", nls(parabola ~ h * (1 - ((x - x0) / w)^2), salt, start = c(h = 8000, x0 = 2.6, w = 3), control = tight))
curve("salt.bell", nls(bell ~ h * exp(-0.5 * ((x - x0) / w)^2), salt, start = c(h = 8000, x0 = 2.6, w = 1), control = tight))
curve("salt.skewed", nls(skewed ~ h * exp(-0.5 * (log(x / x0) / w)^2), salt, start = c(h = 8000, x0 = 2.2, w = 0.5), control = tight))
