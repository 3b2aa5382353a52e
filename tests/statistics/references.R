# What R says of the cases that references.py wrote: r.csv, a line a case. Also the measurements that R ships.
folder <- commandArgs(trailingOnly = TRUE)[1]

# Fieller's limits by their textbook formula with g; the other reference finds roots.
saving <- function(baseline, new, confidence, pooled) {
  a <- mean(new); b <- mean(baseline); n <- length(baseline); m <- length(new); ratio <- a / b
  if (pooled) {
    degrees <- n + m - 2
    s2 <- ((n - 1) * var(baseline) + (m - 1) * var(new)) / degrees
    vb <- s2 / n; va <- s2 / m
    p <- t.test(new, baseline, var.equal = TRUE)$p.value
  } else {
    vb <- var(baseline) / n; va <- var(new) / m
    degrees <- (va + ratio^2 * vb)^2 / (va^2 / (m - 1) + ratio^4 * vb^2 / (n - 1))
    p <- 2 * pt(-abs(a - b) / sqrt(va + vb), degrees)
  }
  t <- qt((1 - confidence) / 2, degrees, lower.tail = FALSE)
  g <- t^2 * vb / b^2
  half <- t * ratio * sqrt((1 - pmin(g, 1)) * va / a^2 + vb / b^2)
  limits <- if (g < 1) 1 - (ratio + c(half, -half)) / (1 - g) else c(NA, NA)
  c(1 - ratio, limits, p, degrees, confidence)
}

series <- function(runs, confidence) {
  test <- t.test(runs, conf.level = confidence)
  c(length(runs), mean(runs), sd(runs), sd(runs) / mean(runs), test$conf.int, confidence)
}

difference <- function(baseline, new, confidence) {
  test <- t.test(new, baseline, conf.level = confidence)
  c(mean(new) - mean(baseline), test$conf.int, test$p.value, test$parameter, confidence)
}

outlier <- function(runs, confidence) {
  n <- length(runs)
  t2 <- qf(1 - (1 - confidence) / n, 1, n - 2) # the square of a t
  distance <- abs(runs - mean(runs))
  apart <- max(distance) > (n - 1) / sqrt(n) * sqrt(t2 / (n - 2 + t2)) * sd(runs)
  if (apart) which.max(distance) else 0
}

runs_needed <- function(variation, change, confidence, wanted) {
  enough <- function(n) power.t.test(n = n, delta = change, sd = variation, sig.level = 1 - confidence,
                                     strict = TRUE)$power >= wanted
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
         RUNSNEEDED = runs_needed(last[1], last[2], last[3], last[4]))
}
written <- function(values) paste(ifelse(is.na(values), "NA", sprintf("%.17g", values)), collapse = " ")

lines <- readLines(file.path(folder, "cases.csv"))
writeLines(vapply(lines, function(line) written(answer(line)), ""), file.path(folder, "r.csv"))
writeLines(written(morley$Speed), file.path(folder, "morley.csv"))
