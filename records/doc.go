package records
