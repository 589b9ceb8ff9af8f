WITH followed AS (
  SELECT site, started, lead(started) OVER (PARTITION BY site ORDER BY started, session) AS next_start
  FROM calls WHERE site <> '')
SELECT
  (SELECT count(*) FROM sessions) AS sessions,
  (SELECT count(*) FROM sessions WHERE practice) AS practice,
  (SELECT count(*) FROM sessions WHERE fault <> '') AS damaged,
  (SELECT count(*) FROM sessions WHERE forked) AS forked,
  (SELECT count(*) FROM calls) AS calls,
  (SELECT count(*) FROM calls WHERE NOT closed) AS unclosed,
  (SELECT count(*) FROM followed) AS calls_at_named_sites,
  (SELECT count(*) FROM followed WHERE next_start <= started + INTERVAL '30' DAY) AS revisited_within_30_days
