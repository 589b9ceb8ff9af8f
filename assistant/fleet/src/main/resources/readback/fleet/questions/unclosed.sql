SELECT session, started, technician, place, events
FROM calls WHERE NOT closed
ORDER BY started DESC, session LIMIT 100
