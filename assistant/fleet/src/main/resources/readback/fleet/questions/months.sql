SELECT month,
  count(*) AS calls,
  count(DISTINCT CASE WHEN technician <> '' THEN technician END) AS technicians,
  median(minutes) AS median_minutes,
  count(*) FILTER (WHERE NOT closed) AS unclosed
FROM calls GROUP BY month ORDER BY month
