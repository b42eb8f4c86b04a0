# An independent computation of a survey in base R, from the formulas alone: none of the tool's code is used.
#   Rscript survey.R            writes expected.json from the readings beside it
# Mean, SD, tolerance factor k, thinnest credible film, clear on the thinnest 5 %, budget over all that it may be, of panels and of the zones
# of those in two; steel panels, factory finish clear over base, history unknown, risk 5 %.

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

# Largest m with the chance that clear - m*exp(s*z) < floor at most `risk`, summed over what the clear may be (means,
# sds, weights); clear and z normal and independent.
clear_allowance <- function(means, sds, weights, floor, risk = .05) {
  breach_of <- function(m, mean, sd) integrate(
    function(z) pnorm((floor + m * exp(LOG_SD * z) - mean) / sd) * dnorm(z),
    -10, 10, rel.tol = 1e-12, abs.tol = 1e-14, subdivisions = 2000)$value
  breach <- function(m) sum(weights * mapply(breach_of, means, sds, MoreArgs = list(m = m)))
  if (risk <= 0 || sum(weights * pnorm((floor - means) / sds)) > risk) return(0)
  uniroot(function(m) breach(m) - risk, c(1e-9, 60), tol = 1e-12)$root
}

u_cal <- function(x) (1 + .02 * x) / sqrt(3)

# Chance that the truth lies on the other side of a line: a difference with its contributions and their degrees of
# freedom (Welch-Satterthwaite). Chances under a 250th of the risk are not counted.
other_side <- function(difference, u, nu) {
  total <- sqrt(sum(u^2))
  chance <- pt(-abs(difference) / total, 1 / sum((u / total)^4 / nu))
  if (chance < .05 / 250) 0 else chance
}

# Chance that a figure, with what it is uncertain by, lies over the line of repaint of a film uncertain by `u_film`.
over_repaint <- function(figure, u, nu, film, u_film) {
  # Over it by 40 and by 35 % of it: no likelier than either.
  by <- function(difference, times) {
    parts <- c(u, times * u_film); total <- sqrt(sum(parts^2))
    pt(difference / total, 1 / sum((parts / total)^4 / c(nu, Inf)))
  }
  min(by(figure - film - 40, 1), by(figure - 1.35 * film, 1.35))
}

# The two groups of least sum of squares, by trying every cut between neighbours that differ.
best_cut <- function(x) {
  x <- sort(x); n <- length(x)
  squares <- function(part) sum((part - mean(part))^2)
  cuts <- which(diff(x) > 0)
  if (length(cuts) == 0) return(NULL)
  at <- cuts[which.min(sapply(cuts, function(i) squares(x[1:i]) + squares(x[(i + 1):n])))]
  list(lower = x[1:at], upper = x[(at + 1):n])
}

# Two zones: means over max(25, 4 s0) apart, nearest points over max(10, 1.5 s0), two points each at least.
is_apart <- function(cut, s0) {
  !is.null(cut) && min(lengths(cut)) >= 2 &&
    mean(cut$upper) - mean(cut$lower) > max(25, 4 * s0) &&
    min(cut$upper) - max(cut$lower) > max(10, 1.5 * s0)
}

survey <- function(file) {
  rows <- read.csv(file, colClasses = c(panel = "character", point = "character"))
  points <- aggregate(reading_um ~ panel + point, rows, mean)
  panels <- unique(rows$panel)
  values <- lapply(panels, function(p) points$reading_um[points$panel == p])
  names(values) <- panels

  within <- tapply(rows$reading_um, list(paste(rows$panel, rows$point)), function(x) c(sum((x - mean(x))^2), length(x) - 1))
  ss <- sum(sapply(within, `[`, 1)); df <- sum(sapply(within, `[`, 2))
  repeatability <- if (df >= 5) sqrt(ss / df) else 1.5
  per_point <- nrow(rows) / nrow(points)
  repeat_dof <- if (df >= 5) df else Inf
  step <- display_step(rows$reading_um)
  counts <- aggregate(reading_um ~ panel + point, rows, length)
  least <- max(repeatability^2 / max(1, per_point), step^2 / 12)

  medians <- sapply(values, median)
  is_filler <- function(x) max(x) > 500
  # One point, or filler under any, is no witness of the others; most panels of these cars agree.
  makers <- medians[medians <= 200 & lengths(values) >= 2 & !sapply(values, is_filler)]
  baseline <- median(makers)
  # Of a median of N normal values. Their SD by the median absolute deviation, unbiased in few (Croux & Rousseeuw 1992),
  # on .37 of the degrees of freedom of s, moderated by what panels vary by about their car, on 4: half of what film
  # varies by over cars, less 5 % of 112 over one panel.
  N <- length(makers)
  b_n <- if (N < 10) c(1.196, 1.495, 1.363, 1.206, 1.200, 1.140, 1.129, 1.107)[N - 1] else N / (N - .8)
  own_sd <- 1.4826 * b_n * median(abs(makers - baseline))
  d_own <- .37 * (N - 1)
  d_baseline <- 4 + d_own
  u_baseline <- sqrt(pi / 2 * (4 * .5 * (136 - (.05 * 112)^2) + d_own * own_sd^2) / d_baseline / N)
  # The usual film as paint over the factory's: repaint both to what factories paint, 112 with an SD of sqrt(6^2 + 10^2),
  # and to that drawn two thirds towards the thinnest panel; no likelier than not.
  u_cars <- sqrt(136)
  shown <- (112 + 2 * min(makers)) / 3
  usual_over <- function(film, u_film)
    over_repaint(baseline, c(u_baseline, u_cal(baseline)), c(d_baseline, Inf), film, u_film)
  p_painted_over <- min(.5, usual_over(112, u_cars), usual_over(shown, u_cars / sqrt(3)))
  # Chance that what factories paint is the measure and not these panels: that one more than may do so does not agree,
  # or that the usual film is none of a factory's.
  rises <- if (.35 * baseline > 40) 1.35 else 1
  rooms <- pmin((baseline + max(40, .35 * baseline) - makers) / rises,
                sapply(values[names(makers)], mean) - (baseline - 12))
  rooms <- sort(rooms[rooms >= 0])
  t_of <- function(difference, u, nu) {
    total <- sqrt(sum(u^2)); pt(difference / total, 1 / sum((u / total)^4 / nu))
  }
  doubt <- max(t_of(-rooms[[length(rooms) - 2]], u_baseline, d_baseline),
               min(.5, t_of(baseline - 152, c(u_baseline, u_cal(baseline)), c(d_baseline, Inf))))
  is_repaint <- function(x) median(x) > 200 || median(x) > baseline + max(40, .35 * baseline)
  is_factory <- function(x) !is_repaint(x) && !is_filler(x)

  own_dof <- function(x) if (length(x) < 3) 0 else length(x) - 1
  own_var <- function(x) if (length(x) < 3) 0 else max(var(x), least)
  assumed <- function(m) list(s0 = max(.05 * m, 4)^2, d0 = 6, ceiling = Inf)
  # What panels say together of the spread; too few of them say nothing.
  pooled <- function(xs) {
    telling <- Filter(function(x) own_dof(x) > 0, xs)
    if (length(telling) < 3) return(assumed(if (length(xs) == 0) 0 else mean(sapply(xs, mean))))
    d <- sapply(telling, own_dof); raw <- sapply(telling, var)
    # Alike or not is judged by the variances as read, at least a tenth of their median: raised to the
    # gauge's noise all would look alike.
    list(s0 = sum(sapply(telling, own_var) * d) / sum(d), ceiling = sum(d),
         d0 = min(prior_dof(pmax(raw, .1 * median(raw)), d), 6))
  }

  # A panel that might be in two zones is no witness against others.
  cuts <- lapply(values, function(x) if (length(x) < 4 || is_filler(x)) NULL else best_cut(x))
  suspect <- sapply(cuts, is_apart, s0 = 0)
  factory <- sapply(values, is_factory)
  s0 <- sqrt(pooled(values[factory & !suspect])$s0)
  # Two levels of repaint are no split.
  mixed <- sapply(panels, function(p)
    is_apart(cuts[[p]], s0) && (is_factory(cuts[[p]]$lower) || is_factory(cuts[[p]]$upper)))
  pool <- pooled(values[factory & !mixed])

  # Sum of 1/readings over the points of a part of a panel.
  per_reading <- function(p, x) {
    own <- points$panel == p
    sum(1 / counts$reading_um[own][match(x, points$reading_um[own])])
  }

  # `odd`: the zone that no factory painted.
  part <- function(p, x, odd = FALSE) {
    m <- mean(x); n <- length(x)
    found <- list(mean_um = m, sd_um = if (n > 1) sd(x) else NA)
    if (is_filler(x)) return(c(found, budget_um = 0))
    prior <- if (is_factory(x) && !odd) pool else assumed(m)
    s2 <- (prior$d0 * prior$s0 + own_dof(x) * own_var(x)) / (prior$d0 + own_dof(x))
    nu <- min(prior$d0 + own_dof(x), prior$ceiling)
    u <- u_cal(m)
    k <- qt(.95, nu, ncp = Z95 * sqrt(n)) / sqrt(n)
    found <- c(found, k = k, moderated_sd_um = sqrt(s2), moderated_dof = nu,
               thinnest_um = max(0, min(m - k * sqrt(s2), min(x)) - Z95 * u))
    if (odd || !is_factory(x)) return(c(found, budget_um = 0))
    # What it may be besides: the mean against the line of film cut back, the median against that of a repaint.
    gauge <- per_reading(p, x) * c(repeatability^2, step^2 / 12)
    own <- c(sqrt(max(0, s2 - sum(gauge) / n) / n), sqrt(gauge) / n)
    dof <- c(nu, repeat_dof, Inf, d_baseline, Inf)
    is_cut <- m < baseline - 12
    p_cut <- other_side(m - (baseline - 12), c(own, u_baseline, u - u_cal(baseline)), dof)
    times <- if (.35 * baseline > 40) 1.35 else 1
    line <- if (times > 1) 1.35 * baseline else baseline + 40
    f <- if (n < 3) 1 else sqrt(pi / 2)
    # Held to what factories paint besides, as far as these panels are in doubt.
    by_factories <- doubt * t_of(100 - m, c(own, u_cars, u), c(nu, repeat_dof, Inf, Inf, Inf))
    cut_to <- baseline
    if (!is_cut && by_factories > p_cut) { p_cut <- by_factories; cut_to <- 112 }
    if (p_cut < .05 / 250) p_cut <- 0
    # Where the usual film is repaint, what reads far less was not cut back.
    if (is_cut && p_painted_over > .05) p_cut <- max(p_cut, p_painted_over)
    p_repaint <- if (line < 200)
      other_side(median(x) - line, c(f * own, times * u_baseline, u - times * u_cal(baseline)), dof) else
      other_side(median(x) - 200, c(f * own, u), dof[c(1:3, 5)])
    by_factories <- doubt * t_of(median(x) - 152, c(f * own, u_cars, u), c(nu, repeat_dof, Inf, Inf, Inf))
    if (by_factories >= .05 / 250) p_repaint <- max(p_repaint, by_factories)
    p_over <- if (median(x) < baseline - 12 || p_painted_over < .05 / 250) 0 else p_painted_over
    p_repaint <- 1 - (1 - p_repaint) * (1 - p_over)
    # clear, if it reads m and lacks what it lacks to the others
    clear <- function(m, lacks) {
      e <- 2 + lacks
      v <- min(s2 / 2, .6 * 36); A <- 36 - v; B <- max(100 - (s2 - v), 100 / 3)
      g <- A / (A + B + u^2 + s2 / n)
      c(mean = 42 - e + g * min(0, m - (42 + 70 - e)) - Z95 * sqrt(v),
        sd = sqrt(A * (1 - g) + Z95^2 * v / (2 * nu)))
    }
    as_cut <- function() { held <- min(m, cut_to - 12); list(clear = clear(held, cut_to - held), lacks = cut_to - held) }
    as_original <- function() list(clear = clear(m, 0), lacks = 0)
    here <- if (is_cut) as_cut() else as_original()
    there <- if (is_cut) as_original() else as_cut()
    weights <- (1 - p_repaint) * c(1 - p_cut, p_cut)
    lacks <- (1 - p_cut) * here$lacks + p_cut * there$lacks
    limits <- c(
      clear = clear_allowance(c(here$clear["mean"], there$clear["mean"]), c(here$clear["sd"], there$clear["sd"]),
                              weights, 22.3, .05 - p_repaint),
      life = max(0, 12.7 - 4 - lacks) * exp(-Z95 * LOG_SD),
      total = max(0, min(x) - 80) * exp(-Z95 * LOG_SD))
    c(found, clear_mean_um = here$clear[["mean"]], clear_sd_um = here$clear[["sd"]], budget_um = min(limits),
      # Of several that allow nothing the floor of the total binds: no reading lifts it.
      bound_by = if (limits[["total"]] == 0) "total" else names(which.min(limits)), other_side_prob = p_cut, repaint_prob = p_repaint)
  }

  lapply(panels, function(p) {
    x <- values[[p]]
    if (!mixed[[p]]) return(c(panel = p, part(p, x)))
    cut <- cuts[[p]]
    # The thicker one where it lies farther over the usual film than the thinner lies under it.
    odd <- mean(cut$upper) - baseline > baseline - mean(cut$lower)
    zones <- list(lower = part(p, cut$lower), upper = part(p, cut$upper, odd))
    # The panel shows all its points, and what the zone that allows least allows.
    list(panel = p, mean_um = mean(x), sd_um = sd(x),
         thinnest_um = min(unlist(lapply(zones, `[[`, "thinnest_um"))),
         budget_um = min(sapply(zones, `[[`, "budget_um")),
         zones = list(c(zone = "thinner", zones$lower), c(zone = "thicker", zones$upper)))
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
