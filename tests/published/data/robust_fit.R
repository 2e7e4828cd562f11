# Centre and scale matrix of a bivariate t by MASS::cov.trob (W. N. Venables and B. D. Ripley, Modern Applied
# Statistics with S, 4th ed. 2002; Debian's r-cran-mass), for each set of robust_fit_shots.csv and each number
# of degrees of freedom.
#
#   Rscript robust_fit.R                    prints the table kept as robust_fit.csv
#   Rscript robust_fit.R robust_fit.csv     compares with it; status 1 when a number differs by more than 1e-7
#
# cov.trob's `cov` is the scale matrix of the t (its source: crossprod(sqrt(w) * X) / n with w = (nu + 2) /
# (nu + Q)), not the covariance, which is nu / (nu - 2) times that.
suppressPackageStartupMessages(library(MASS))

arguments <- commandArgs(trailingOnly = FALSE)
here <- dirname(sub("^--file=", "", grep("^--file=", arguments, value = TRUE)))
shots <- read.csv(file.path(here, "robust_fit_shots.csv"))

fit <- function(set, nu) {
  own <- shots[shots$set == set, c("carry_yd", "side_yd")]
  found <- cov.trob(own, nu = nu, tol = 1e-10, maxit = 1000)
  data.frame(set = set, tail_dof = nu, carry_yd = found$center[[1]], side_yd = found$center[[2]],
             carry_carry = found$cov[1, 1], carry_side = found$cov[1, 2], side_side = found$cov[2, 2])
}
cases <- expand.grid(nu = c(3, 5, 8, 30), set = unique(shots$set), stringsAsFactors = FALSE)
table <- do.call(rbind, Map(fit, cases$set, cases$nu))

kept <- commandArgs(trailingOnly = TRUE)
if (length(kept) == 0) {
  table[-1] <- lapply(table[-1], function(x) sprintf("%.12g", x))
  write.csv(table, row.names = FALSE, quote = FALSE)
} else {
  expected <- read.csv(kept[1])
  stopifnot(identical(dim(expected), dim(table)), identical(as.character(expected$set), table$set))
  off <- max(abs(as.matrix(expected[-1]) - as.matrix(table[-1])) / pmax(1, abs(as.matrix(table[-1]))))
  cat("largest difference:", off, "\n")
  if (off > 1e-7) quit(status = 1)
}
