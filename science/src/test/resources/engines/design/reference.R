# What the exchange algorithm reaches on the problems of a file, for comparison: the largest D over many random starts and over
# two sets of candidates, (1) corners, centroids of edges, of two-dimensional faces and of facets, and the overall centroid,
# (2) the same and a lattice of pseudocomponents. Written apart from the program that is compared with it; on the two problems
# whose figures from AlgDesign's optFederov are handed down it gives the same (first lines of the answer).
# Rscript reference.R problems.txt > reference.txt   (R 4.2.2, no packages)
set.seed(1)
nums <- function(s) as.numeric(strsplit(trimws(s), " +")[[1]])

corners <- function(lo, hi, cuts) { # every choice of q - 1 sides that meet in a point of the region
  q <- length(lo); A <- rbind(-diag(q), diag(q)); b <- c(-lo, hi)
  for (c in cuts) { A <- rbind(A, c$a, -c$a); b <- c(b, c$max, -c$min) }
  found <- list(); keys <- character(0)
  pick <- combn(nrow(A), q - 1)
  for (k in seq_len(ncol(pick))) {
    S <- rbind(rep(1, q), A[pick[, k], , drop = FALSE])
    x <- tryCatch(.Internal(La_solve(S, c(1, b[pick[, k]]), 1e-10)), error = function(e) NULL)
    if (is.null(x) || any(A %*% x > b + 1e-9)) next
    key <- paste(sprintf("%.7f", x + 0), collapse = " ")
    if (!(key %in% keys)) { keys <- c(keys, key); found[[length(found) + 1]] <- x }
  }
  V <- do.call(rbind, found)
  list(V = V, on = abs(V %*% t(A) - rep(1, nrow(V)) %o% b) < 1e-9)
}

faces <- function(body, size) { # centroids of the faces on which so many sides meet
  if (size < 1) return(NULL)
  groups <- new.env()
  for (v in seq_len(nrow(body$V))) {
    on <- which(body$on[v, ])
    if (length(on) >= size) for (s in combn(length(on), size, simplify = FALSE)) {
      key <- paste(on[s], collapse = ","); groups[[key]] <- c(groups[[key]], v) }
  }
  out <- lapply(ls(groups), function(k) colMeans(body$V[groups[[k]], , drop = FALSE]))
  do.call(rbind, out)
}

lattice <- function(q, m) if (q == 1) matrix(m) else
  do.call(rbind, lapply(0:m, function(i) cbind(i, lattice(q - 1, m - i))))

grid <- function(lo, hi, cuts, most) { # the finest lattice with not too many points inside
  q <- length(lo); best <- NULL
  for (m in 2:60) {
    if (choose(q + m - 1, m) > 400000) break
    P <- lattice(q, m) / m
    X <- sweep(P * (1 - sum(lo)), 2, lo, "+")
    ok <- apply(X <= rep(1, nrow(X)) %o% (hi + 1e-9), 1, all)
    for (c in cuts) ok <- ok & X %*% c$a <= c$max + 1e-9 & X %*% c$a >= c$min - 1e-9
    if (sum(ok) > most) break
    best <- X[ok, , drop = FALSE]
  }
  best
}

model <- function(Z, W, blending, how) {
  q <- ncol(Z); k <- if (is.null(W)) 0 else ncol(W)
  B <- Z
  if (blending != "linear") for (s in combn(q, 2, simplify = FALSE)) B <- cbind(B, Z[, s[1]] * Z[, s[2]])
  if (blending == "special-cubic") for (s in combn(q, 3, simplify = FALSE)) B <- cbind(B, Z[, s[1]] * Z[, s[2]] * Z[, s[3]])
  X <- B; crossed <- if (how == "crossed") B else Z
  for (i in seq_len(k)) X <- cbind(X, crossed * W[, i])
  if (how == "quadratic") for (i in seq_len(k)) for (j in i:k) X <- cbind(X, W[, i] * W[, j])
  if (how == "crossed" && k > 1) for (s in combn(k, 2, simplify = FALSE)) X <- cbind(X, crossed * W[, s[1]] * W[, s[2]])
  X
}

exchange <- function(X, n, repeats) {
  m <- nrow(X); p <- ncol(X)
  R <- qr.R(qr(X, LAPACK = FALSE)); C <- X %*% solve(R); shift <- 2 * sum(log(abs(diag(R))))
  best <- -Inf
  for (r in seq_len(repeats)) {
    rows <- sample.int(m, n, replace = TRUE)
    ridge <- 1e-6 # a start may be singular: the ridge goes once exchanges have begun
    for (pass in 1:100) {
      I <- solve(crossprod(C[rows, , drop = FALSE]) + diag(ridge, p))
      d <- rowSums((C %*% I) * C); moved <- FALSE
      for (i in seq_len(n)) {
        x <- C[rows[i], ]; cross <- as.vector(C %*% (I %*% x))
        gain <- (1 + d) * (1 - d[rows[i]]) + cross^2
        j <- which.max(gain)
        if (gain[j] > 1 + 1e-9) {
          u <- I %*% C[j, ]; s <- 1 + d[j]; d <- d - as.vector(C %*% u)^2 / s; I <- I - u %*% t(u) / s
          u <- I %*% x; s <- 1 - sum(x * u); d <- d + as.vector(C %*% u)^2 / s; I <- I + u %*% t(u) / s
          rows[i] <- j; moved <- TRUE
        }
      }
      if (!moved) { if (ridge == 0) break; ridge <- 0
        if (rcond(crossprod(C[rows, , drop = FALSE])) < 1e-14) break }
    }
    value <- determinant(crossprod(C[rows, , drop = FALSE]))
    if (value$sign > 0) best <- max(best, value$modulus)
  }
  exp((best + shift) / p) / n
}

for (line in c("a;0 0 0;1 1 1;;quadratic;0;none;10", "b;0.1 0.05 0.1 0;0.6 0.5 0.7 0.3;;quadratic;0;none;15",
               readLines(commandArgs(TRUE)[1]))) {
  f <- strsplit(line, ";")[[1]]; lo <- nums(f[2]); hi <- nums(f[3]); q <- length(lo); k <- as.integer(f[6]); n <- as.integer(f[8])
  cuts <- lapply(strsplit(f[4], ",")[[1]], function(s) { g <- strsplit(s, "|", fixed = TRUE)[[1]]
    list(a = nums(g[1]), min = as.numeric(g[2]), max = as.numeric(g[3])) })
  hi <- pmin(hi, lo + 1 - sum(lo))
  body <- corners(lo, hi, cuts)
  first <- unique(round(rbind(body$V, faces(body, q - 2), faces(body, q - 3), faces(body, 1), colMeans(body$V)), 10))
  settings <- if (k == 0) NULL else as.matrix(expand.grid(rep(list(if (f[7] == "quadratic") -1:1 else c(-1, 1)), k)))
  most <- 2000 / if (k == 0) 1 else nrow(settings)
  sets <- list(first, unique(round(rbind(first, grid(lo, hi, cuts, most)), 10)))
  reached <- sapply(1:2, function(s) {
    P <- sets[[s]]
    W <- if (k == 0) NULL else settings[rep(seq_len(nrow(settings)), each = nrow(P)), , drop = FALSE]
    if (k > 0) P <- P[rep(seq_len(nrow(P)), nrow(settings)), , drop = FALSE]
    Z <- sweep(P, 2, lo) / (1 - sum(lo))
    t <- system.time(D <- exchange(model(Z, W, f[5], f[7]), n, if (s == 1) 100 else 30))[1]
    c(D, t, nrow(P)) })
  cat(sprintf("%s;%.12g;%.12g;%d;%d;%.2f;%.2f\n", f[1], reached[1, 1], reached[1, 2], reached[3, 1], reached[3, 2],
              reached[2, 1], reached[2, 2]))
}
