# An independent computation of a survey in base R, from the formulas alone: none of the tool's code is used.
#   Rscript survey.R            writes expected.json from the readings beside it
# Mean, SD, tolerance factor k, thinnest credible film, clear on the thinnest 5 %, budget; steel panels, factory
# finish clear over base, history unknown, risk 5 %.

Z95 <- qnorm(.95)
LOG_SD <- sqrt(.35^2 + .40^2 + .15^2)

inverse_trigamma <- function(x) uniroot(function(y) trigamma(y) - x, c(1e-6, 1e8), tol = 1e-13)$root

# Smyth 2004, Stat. Appl. Genet. Mol. Biol. 3(1):3: moments of the logarithms of sample variances.
prior_dof <- function(s2, d) {
  e <- log(s2) - digamma(d / 2) + log(d / 2)
  excess <- var(e) - mean(trigamma(d / 2))
  if (excess <= 0) Inf else 2 * inverse_trigamma(excess)
}

display_step <- function(x) {
  for (step in c(10, 5, 2.54, 1, .5, .254, .1, .0254, .01))
    if (all(abs(x / step - round(x / step)) < 1e-6)) return(step)
  0
}

# Largest m with the chance that clear - m*exp(s*z) < floor at most `risk`; clear and z normal and independent.
clear_allowance <- function(mean, sd, floor, risk = .05) {
  breach <- function(m) integrate(
    function(z) pnorm((floor + m * exp(LOG_SD * z) - mean) / sd) * dnorm(z),
    -10, 10, rel.tol = 1e-12, abs.tol = 1e-14, subdivisions = 2000)$value
  if (pnorm((floor - mean) / sd) > risk) return(0)
  uniroot(function(m) breach(m) - risk, c(1e-9, 60), tol = 1e-12)$root
}

survey <- function(file) {
  rows <- read.csv(file, colClasses = c(panel = "character", point = "character"))
  points <- aggregate(reading_um ~ panel + point, rows, mean)
  counts <- aggregate(reading_um ~ panel + point, rows, length)
  panels <- unique(rows$panel)
  values <- lapply(panels, function(p) points$reading_um[points$panel == p])
  names(values) <- panels

  within <- tapply(rows$reading_um, list(paste(rows$panel, rows$point)), function(x) c(sum((x - mean(x))^2), length(x) - 1))
  ss <- sum(sapply(within, `[`, 1)); df <- sum(sapply(within, `[`, 2))
  repeatability <- if (df >= 5) sqrt(ss / df) else 1.5
  per_point <- nrow(rows) / nrow(points)
  least <- max(repeatability^2 / max(1, per_point), display_step(rows$reading_um)^2 / 12)

  medians <- sapply(values, median)
  baseline <- median(medians[medians <= 200])
  refinished <- medians > 200 | medians > baseline + pmax(40, .35 * baseline)
  filler <- sapply(values, max) > 500
  cut_back <- !refinished & sapply(values, mean) < baseline - 12
  factory <- !refinished & !filler

  n <- sapply(values, length)
  raw <- sapply(values, function(x) if (length(x) < 3) 0 else var(x))
  own <- ifelse(n < 3, 0, pmax(raw, least))
  dof <- ifelse(n < 3, 0, n - 1)
  pool <- factory & dof > 0
  stopifnot(sum(pool) >= 3)
  # Alike or not is judged by the variances as read, at least a tenth of their median: raised to the
  # gauge's noise all would look alike.
  d0 <- min(prior_dof(pmax(raw[pool], .1 * median(raw[pool])), dof[pool]), 6)
  s0 <- sum(own[pool] * dof[pool]) / sum(dof[pool])

  lapply(panels, function(p) {
    x <- values[[p]]; m <- mean(x); i <- match(p, panels)
    if (!factory[i]) return(list(panel = p, mean_um = m, sd_um = sd(x), budget_um = 0))
    s2 <- (d0 * s0 + dof[i] * own[i]) / (d0 + dof[i]); nu <- min(d0 + dof[i], sum(dof[pool]))
    u <- (1 + .02 * m) / sqrt(3)
    k <- qt(.95, nu, ncp = Z95 * sqrt(n[i])) / sqrt(n[i])
    thinnest <- max(0, min(m - k * sqrt(s2), min(x)) - Z95 * u)
    # clear
    e <- 2 + (if (cut_back[i]) baseline - m else 0)
    v <- min(s2 / 2, .6 * 36); A <- 36 - v; B <- max(100 - (s2 - v), 100 / 3)
    g <- A / (A + B + u^2 + s2 / n[i])
    c_mean <- 42 - e + g * min(0, m - (42 + 70 - e)) - Z95 * sqrt(v)
    c_sd <- sqrt(A * (1 - g) + Z95^2 * v / (2 * nu))
    limits <- c(
      clear = clear_allowance(c_mean, c_sd, 22.3),
      life = (12.7 - 4) * exp(-Z95 * LOG_SD),
      total = max(0, min(x) - 80) * exp(-Z95 * LOG_SD))
    list(panel = p, mean_um = m, sd_um = if (n[i] > 1) sd(x) else NA, k = unname(k), moderated_sd_um = sqrt(s2),
         moderated_dof = unname(nu), thinnest_um = unname(thinnest), clear_mean_um = c_mean, clear_sd_um = c_sd,
         budget_um = min(limits), bound_by = names(which.min(limits)))
  })
}

json <- function(x) {
  if (is.list(x) && !is.null(names(x)))
    paste0("{", paste0('"', names(x), '":', sapply(x, json), collapse = ","), "}")
  else if (is.list(x)) paste0("[\n", paste(sapply(x, json), collapse = ",\n"), "\n]")
  else if (is.character(x)) paste0('"', x, '"')
  else sprintf("%.12g", x)
}

here <- dirname(sub("--file=", "", grep("--file=", commandArgs(), value = TRUE)))
files <- list.files(here, "\\.csv$")
results <- lapply(files, function(f) list(file = f, panels = survey(file.path(here, f))))
writeLines(json(results), file.path(here, "expected.json"))
