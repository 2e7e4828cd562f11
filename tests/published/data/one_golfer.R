# The model of golfer-profiles/evidence/golfer_prior.hpp fitted by JAGS (M. Plummer, JAGS: a program for analysis
# of Bayesian graphical models using Gibbs sampling, DSC 2003; Debian's jags and r-cran-rjags), written down anew
# in its language: three builds of two clubs of one golfer, without mishits and sessions, six degrees of freedom.
#
#   Rscript one_golfer.R --write        writes one_golfer_jags.csv: means, standard deviations and quantiles
#                                       of the posterior. About a minute.
#   Rscript one_golfer.R                a shorter run compared with the kept file; status 1 when they differ by more
#                                       than Monte Carlo error (`allowed` below)
suppressPackageStartupMessages(library(rjags))

arguments <- commandArgs(trailingOnly = FALSE)
here <- dirname(sub("^--file=", "", grep("^--file=", arguments, value = TRUE)))
kept <- file.path(here, "one_golfer_jags.csv")
to_write <- identical(commandArgs(trailingOnly = TRUE), "--write")

# Relative numbers: share of the carry past the typical one, tangent of the side.
shots <- read.csv(file.path(here, "one_golfer_shots.csv"), stringsAsFactors = FALSE)
builds <- unique(shots$build)
families <- unique(shots$family)
traits <- c("carry", "direction", "log_along", "log_across", "twist")

# golfer_prior.hpp's standard deviations; the typical club of hierarchy_published.cpp.
known <- list(
  typical = c(0, 0, log(0.06), log(0.09), -0.1),
  golfer_sd = c(0.10, 0.070, 0.40, 0.40, 0.25),
  club_sd = c(0.04, 0.021, 0.15, 0.15, 0.15),
  build_sd = c(0.012, 0.0105, 0.09, 0.09, 0.05),
  builds = length(builds), families = length(families),
  family = match(shots$family[match(builds, shots$build)], families),
  shots = nrow(shots), build = match(shots$build, builds),
  place = as.matrix(shots[c("carry", "side")]))

# JAGS's dnorm, dt and dmnorm take precisions. The builds' own parts are scaled to one: builds differ too little
# for chains that hold each at its own value to move the club below them.
model <- "model {
  for (k in 1:5) {
    golfer[k] ~ dt(typical[k], pow(golfer_sd[k], -2), 4)
    for (c in 1:families) { club[k, c] ~ dt(golfer[k], pow(club_sd[k], -2), 4) }
    for (b in 1:builds) {
      own[k, b] ~ dnorm(0, 1)
      trait[k, b] <- club[k, family[b]] + build_sd[k] * own[k, b]
    }
    level[k] <- golfer[k] - typical[k]
    shorter[k] <- trait[k, 1] - trait[k, 2]
  }
  for (b in 1:builds) {
    along[b] <- exp(trait[3, b])
    across[b] <- exp(trait[4, b])
    rho[b] <- tanh(trait[5, b])
    rest[b] <- 1 - pow(rho[b], 2)
    precision[b, 1, 1] <- 1 / (pow(along[b], 2) * rest[b])
    precision[b, 2, 2] <- 1 / (pow(across[b], 2) * rest[b])
    precision[b, 1, 2] <- -rho[b] / (along[b] * across[b] * rest[b])
    precision[b, 2, 1] <- precision[b, 1, 2]
  }
  for (i in 1:shots) {
    weight[i] ~ dgamma(3, 3)  # a bivariate t of 6 degrees of freedom, as a mixture
    place[i, 1:2] ~ dmnorm(trait[1:2, build[i]], weight[i] * precision[build[i], 1:2, 1:2])
  }
}"

chains <- 4
iterations <- if (to_write) 8000 else 1200
seeds <- lapply(seq_len(chains), function(chain)
  list(.RNG.name = "base::Mersenne-Twister", .RNG.seed = if (to_write) chain else 100 + chain))
text <- textConnection(model)
fit <- jags.model(text, known, inits = seeds, n.chains = chains, n.adapt = 500, quiet = TRUE)
close(text)
update(fit, 300, progress.bar = "none")
drawn <- coda.samples(fit, c("trait", "shorter", "level"), iterations, thin = 1, progress.bar = "none")
sizes <- effectiveSize(drawn)
all <- as.matrix(drawn)

row_of <- function(build, trait, column) {
  draws <- all[, column]
  data.frame(build = build, trait = trait, mean = mean(draws), sd = sd(draws),
             q05 = quantile(draws, 0.05, names = FALSE), q95 = quantile(draws, 0.95, names = FALSE),
             effective = sizes[[column]], stringsAsFactors = FALSE)
}
rows <- list()
for (b in seq_along(builds)) for (k in seq_along(traits))
  rows[[length(rows) + 1]] <- row_of(builds[b], traits[k], sprintf("trait[%d,%d]", k, b))
for (k in seq_along(traits))
  rows[[length(rows) + 1]] <- row_of(paste(builds[1], "minus", builds[2]), traits[k], sprintf("shorter[%d]", k))
for (k in seq_along(traits))
  rows[[length(rows) + 1]] <- row_of("golfer less typical", traits[k], sprintf("level[%d]", k))
table <- do.call(rbind, rows)

if (to_write) {
  numbers <- c("mean", "sd", "q05", "q95")
  table[numbers] <- lapply(table[numbers], function(x) sprintf("%.6f", x))
  table$effective <- sprintf("%.0f", table$effective)
  write.csv(table, kept, row.names = FALSE, quote = c(1, 2))
} else {
  expected <- read.csv(kept, stringsAsFactors = FALSE)
  stopifnot(identical(expected$build, table$build), identical(expected$trait, table$trait))
  # Standard errors, in posterior standard deviations, of a mean, a standard deviation and a 5 % quantile of n
  # independent draws of a normal; n is the effective size of both runs together. Four of them are allowed:
  # of a hundred comparisons one fails by chance in a hundred and fifty runs with other seeds.
  error <- sqrt(1 / table$effective + 1 / expected$effective)
  of_quantile <- sqrt(0.05 * 0.95) / dnorm(qnorm(0.05))
  allowed <- 4 * error * matrix(c(1, sqrt(0.5), of_quantile, of_quantile), nrow(table), 4, byrow = TRUE)
  numbers <- c("mean", "sd", "q05", "q95")
  off <- abs(as.matrix(table[numbers]) - as.matrix(expected[numbers])) / expected$sd
  cat(sprintf("largest difference: %.3f of what is allowed (%.3f to %.3f posterior sd)\n", max(off / allowed),
              min(allowed), max(allowed)))
  if (any(off > allowed)) {
    print(cbind(table[c("build", "trait")], round(off / allowed, 2))[rowSums(off > allowed) > 0, ])
    quit(status = 1)
  }
}
