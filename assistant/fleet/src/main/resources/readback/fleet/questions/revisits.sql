WITH followed AS (
  SELECT site, place, started, lead(started) OVER (PARTITION BY site ORDER BY started, session) AS next_start
  FROM calls WHERE site <> '')
SELECT max(place) AS place,
  count(*) AS calls,
  count(*) FILTER (WHERE next_start <= started + INTERVAL '30' DAY) AS revisited
FROM followed GROUP BY site
HAVING count(*) FILTER (WHERE next_start <= started + INTERVAL '30' DAY) > 0
ORDER BY revisited DESC, calls DESC, place LIMIT 100
