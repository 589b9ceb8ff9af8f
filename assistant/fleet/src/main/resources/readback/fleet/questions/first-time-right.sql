-- Only calls whose 30 days are over are decided, and only units with a name can be followed.
WITH followed AS (
  SELECT *, lead(started) OVER (PARTITION BY unit ORDER BY started, session) AS next_start
  FROM calls WHERE unit <> ''),
decided AS (
  SELECT technician, first_charge,
    closed AND charge = 'in-tolerance'
      AND (next_start IS NULL OR next_start > started + INTERVAL '30' DAY) AS held
  FROM followed WHERE charge <> '' AND started + INTERVAL '30' DAY <= {as_of})
SELECT technician,
  count(*) AS charge_calls,
  count(*) FILTER (WHERE first_charge = 'in-tolerance') AS in_tolerance_at_first,
  count(*) FILTER (WHERE held) AS right_first_time,
  1.0 * count(*) FILTER (WHERE held) / count(*) AS share
FROM decided GROUP BY technician ORDER BY technician
