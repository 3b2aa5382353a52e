# What R says of the cases that references.py wrote: r.csv, a line a case. Also the measurements that R ships.
folder <- commandArgs(trailingOnly = TRUE)[1]

# With one variance in common, Fieller's limits by their textbook formula with g; with two, the Welch test inverted on a
# grid of angles that is refined where the test begins to refuse. The other reference finds roots along the ratio.
saving <- function(baseline, new, confidence, pooled) {
  a <- mean(new); b <- mean(baseline); n <- length(baseline); m <- length(new); ratio <- a / b
  test <- t.test(new, baseline, var.equal = pooled)
  if (pooled) {
    s2 <- ((n - 1) * var(baseline) + (m - 1) * var(new)) / (n + m - 2)
    vb <- s2 / n; va <- s2 / m
    t <- qt((1 - confidence) / 2, n + m - 2, lower.tail = FALSE)
    g <- t^2 * vb / b^2
    half <- t * ratio * sqrt((1 - pmin(g, 1)) * va / a^2 + vb / b^2)
    limits <- if (g < 1) 1 - (ratio + c(half, -half)) / (1 - g) else c(NA, NA)
  } else {
    p <- function(angle) {
      if (abs(angle) >= pi / 2) return(2 * pt(-abs(b) / sqrt(var(baseline) / n), n - 1))
      t.test(new, tan(angle) * baseline)$p.value
    }
    found <- atan(ratio); beyond <- 1 - confidence
    middle <- -atan((var(new) / m * b) / (var(baseline) / n * a)) # where the statistic is largest below the ratio
    border <- function(end) uniroot(function(angle) p(angle) - beyond, c(found, end), tol = 1e-15)$root
    limits <- if (p(pi / 2) < beyond && p(middle) < beyond) 1 - tan(c(border(pi / 2), border(middle))) else c(NA, NA)
  }
  c(1 - ratio, limits, test$p.value, test$parameter, confidence)
}

paired_difference <- function(before, after, confidence) {
  test <- t.test(after, before, paired = TRUE, conf.level = confidence)
  c(test$estimate, test$conf.int, test$p.value, test$parameter, confidence, length(before), 0)
}

# Fieller's quadratic with the covariance of the means.
paired_saving <- function(before, after, confidence) {
  n <- length(before); b <- mean(before); a <- mean(after)
  t2 <- qt((1 - confidence) / 2, n - 1)^2 / n
  leading <- b^2 - t2 * var(before)
  middle <- a * b - t2 * cov(before, after)
  root <- sqrt(max(0, middle^2 - leading * (a^2 - t2 * var(after))))
  limits <- if (leading > 0) 1 - (middle + c(root, -root)) / leading else c(NA, NA)
  c(1 - a / b, limits, t.test(after, before, paired = TRUE)$p.value, n - 1, confidence, n, 0)
}

series <- function(runs, confidence) {
  test <- t.test(runs, conf.level = confidence)
  c(mean(runs), length(runs), sd(runs), sd(runs) / mean(runs), test$conf.int, confidence)
}

difference <- function(baseline, new, confidence) {
  test <- t.test(new, baseline, conf.level = confidence)
  c(mean(new) - mean(baseline), test$conf.int, test$p.value, test$parameter, confidence)
}

# Generalised ESD, up to a third of the runs.
outlier <- function(runs, confidence) {
  left <- seq_along(runs); taken <- c(); found <- 0
  for (i in seq_len(length(runs) %/% 3)) {
    n <- length(left)
    if (sd(runs[left]) == 0) break
    distance <- abs(runs[left] - mean(runs[left])) / sd(runs[left])
    t <- qt((1 - confidence) / (2 * n), n - 2, lower.tail = FALSE)
    taken <- c(taken, left[which.max(distance)])
    if (max(distance) > (n - 1) * t / sqrt((n - 2 + t^2) * n)) found <- i
    left <- left[-which.max(distance)]
  }
  if (found > 0) sort(taken[seq_len(found)]) else 0
}

# Welch's power with equal numbers and scatter: the noncentral t averaged over the share that one variance has in the
# sum of both.
power <- function(n, effect, confidence) {
  angle <- (seq_len(200) - 0.5) / 200 * pi / 2
  weight <- sin(2 * angle); weight <- weight / sum(weight)
  share <- qbeta(sin(angle)^2, (n - 1) / 2, (n - 1) / 2)
  t <- qt((1 - confidence) / 2, (n - 1) / (share^2 + (1 - share)^2), lower.tail = FALSE)
  shift <- effect * sqrt(n / 2)
  if (shift > 37) return(1) # what pt can do
  sum(weight * (pt(t, 2 * (n - 1), shift, lower.tail = FALSE) + pt(-t, 2 * (n - 1), shift)))
}

runs_needed <- function(variation, change, confidence, wanted, pilot) {
  if (!is.na(pilot)) variation <- variation * sqrt((pilot - 1) / qchisq(0.2, pilot - 1))
  enough <- function(n) suppressWarnings(power(n, change / variation, confidence)) >= wanted
  if (!enough(10000)) return(NA)
  low <- 1; high <- 10000
  while (high - low > 1) {
    middle <- (low + high) %/% 2
    if (enough(middle)) high <- middle else low <- middle
  }
  high
}

numbers <- function(text) as.numeric(strsplit(text, " ", fixed = TRUE)[[1]])
answer <- function(line) {
  field <- strsplit(line, ";", fixed = TRUE)[[1]]
  last <- numbers(field[length(field)])
  switch(field[1],
         SERIES = series(numbers(field[2]), last),
         DIFFERENCE = difference(numbers(field[2]), numbers(field[3]), last),
         SAVING = saving(numbers(field[2]), numbers(field[3]), last[1], last[2] == 1),
         OUTLIER = outlier(numbers(field[2]), last),
         PAIREDDIFFERENCE = paired_difference(numbers(field[2]), numbers(field[3]), last),
         PAIREDSAVING = paired_saving(numbers(field[2]), numbers(field[3]), last),
         RUNSNEEDED = runs_needed(last[1], last[2], last[3], last[4], last[5]))
}
written <- function(values) paste(ifelse(is.na(values), "NA", sprintf("%.17g", values)), collapse = " ")

lines <- readLines(file.path(folder, "cases.csv"))
writeLines(vapply(lines, function(line) written(answer(line)), ""), file.path(folder, "r.csv"))
writeLines(written(morley$Speed), file.path(folder, "morley.csv"))

# Random tables of variants run in blocks, unbalanced ones too, and what lm says of them: blocked.csv, a table a line.
set.seed(20261101)
blocked <- function() {
  repeat {
    variants <- sample(2:5, 1); blocks <- sample(2:7, 1)
    rows <- expand.grid(variant = seq_len(variants), block = seq_len(blocks), run = seq_len(sample(1:3, 1)))
    if (runif(1) < 0.6) rows <- rows[runif(nrow(rows)) < 0.75, ]
    rows$result <- signif(20 * (1 + rnorm(variants, 0, 0.1)[rows$variant] + rnorm(blocks, 0, 0.1)[rows$block] +
                                  rnorm(nrow(rows), 0, 0.03)), 5)
    if (length(unique(rows$variant)) < 2) next
    first <- unique(rows$variant)
    baseline <- sample(first, 1)
    others <- setdiff(first, baseline)
    variant <- factor(rows$variant, levels = c(baseline, others))
    model <- if (length(unique(rows$block)) > 1) lm(rows$result ~ variant + factor(rows$block)) else lm(rows$result ~ variant)
    told <- summary(model)$coefficients
    wanted <- seq_along(others) + 1
    if (any(is.na(coef(model))) || model$df.residual < 1) next
    limits <- confint(model)
    p <- p.adjust(told[wanted, 4], "holm")
    answer <- rbind(told[wanted, 1], limits[wanted, 1], limits[wanted, 2], p, table(rows$variant)[as.character(others)], others)
    return(paste(written(rows$result), written(rows$variant), written(rows$block), baseline, written(answer), sep = ";"))
  }
}
writeLines(replicate(2000, blocked()), file.path(folder, "blocked.csv"))
