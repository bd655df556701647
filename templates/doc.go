package templates
