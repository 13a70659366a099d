-- What a pump that is sold adds to its intake, by points of its curve, and what drives it.
ALTER TABLE ITEM ADD COLUMN PUMP_CURVE VARCHAR(400);

ALTER TABLE ITEM ADD COLUMN FUEL VARCHAR(20);
