SELECT technician, model,
  count(*) AS calls,
  CAST(sum(values_taken) AS BIGINT) AS values_taken,
  CAST(sum(doubts) AS BIGINT) AS doubts,
  CASE WHEN sum(values_taken) > 0 THEN 1.0 * sum(doubts) / sum(values_taken) END AS doubts_a_value
FROM calls GROUP BY technician, model ORDER BY technician, model
